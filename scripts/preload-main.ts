import type { HtmlTagDescriptor, Plugin, Rollup } from 'vite';

function chunksBehind(bundle: Rollup.OutputBundle, names: readonly string[], seen = new Set<string>()): Set<string> {
  for (const name of names) {
    const file = bundle[name];
    if (file?.type !== 'chunk' || seen.has(name)) continue;
    // What is imported comes first, as its styles must.
    seen.add(name);
    chunksBehind(bundle, file.imports, seen);
    seen.delete(name);
    seen.add(name);
  }
  return seen;
}

/** The styles that come with a chunk; Vite keeps them beside it. */
function stylesOf(chunk: Rollup.OutputChunk): string[] {
  const { viteMetadata } = chunk as { readonly viteMetadata?: { readonly importedCss: ReadonlySet<string> } };
  return [...(viteMetadata?.importedCss ?? [])];
}

/**
 * Names in index.html what the page's boot will import, so that all of it is fetched at once and the styles stand before the first paint.
 *
 * @param entry the end of the path of the module that the boot imports
 */
export function preloadMain(entry: string): Plugin {
  return {
    name: 'sidejar-preload-main',
    transformIndexHtml: {
      order: 'post',
      handler(html, { bundle }) {
        if (bundle === undefined) return [];
        const main = Object.values(bundle).find(
          (file) => file.type === 'chunk' && file.moduleIds.some((id) => id.endsWith(entry)),
        );
        if (main === undefined) throw new Error(`Nothing was built from ${entry}.`);
        const chunks = [...chunksBehind(bundle, [main.fileName])];
        const styles = new Set(chunks.flatMap((name) => stylesOf(bundle[name] as Rollup.OutputChunk)));
        const link = (rel: string, file: string): HtmlTagDescriptor => ({
          tag: 'link',
          attrs: { rel, crossorigin: true, href: `./${file}` },
          injectTo: 'head',
        });
        return [
          ...chunks.map((file) => link('modulepreload', file)),
          ...[...styles].map((file) => link('stylesheet', file)),
        ].filter(({ attrs }) => !html.includes(String(attrs?.href)));
      },
    },
  };
}
