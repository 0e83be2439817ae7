import type { Rollup } from 'vite';

interface Modules {
  getModuleInfo(id: string): Pick<Rollup.ModuleInfo, 'importedIds'> | null;
}

/** All that a module imports at once, itself among it. */
function behind(modules: Modules, id: string, seen = new Set<string>()): Set<string> {
  if (seen.has(id)) return seen;
  seen.add(id);
  for (const imported of modules.getModuleInfo(id)?.importedIds ?? []) behind(modules, imported, seen);
  return seen;
}

/**
 * One file for all that the first screen needs: two dozen small ones would be asked for one after the other. What the boot itself
 * imports stays outside, because the first screen's modules may be read only once the language is known.
 *
 * @param boot path of the page's boot
 * @param main path of what the boot imports later
 */
export function firstChunk(boot: string, main: string) {
  let inFirst: ReadonlySet<string> | null = null;
  return {
    debugName: 'first',
    name(id: string, modules: Modules): string | null {
      if (inFirst === null) {
        const [early, all] = [boot, main].map((file) => behind(modules, file.replaceAll('\\', '/')));
        if (early === undefined || all === undefined || all.size < 2)
          throw new Error(`Nothing is imported by ${main}.`);
        inFirst = new Set([...all].filter((one) => !early.has(one)));
      }
      return inFirst.has(id) ? 'first' : null;
    },
    includeDependenciesRecursively: false,
  };
}
