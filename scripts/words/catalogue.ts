import type { FoundPhrase } from './find-phrases.ts';

/** What the catalogue says of a phrase: where it stands, and what is put into its places. */
export interface CatalogueEntry {
  readonly in: readonly string[];
  readonly puts?: readonly string[];
}

export type Catalogue = Readonly<Record<string, CatalogueEntry>>;

/** The catalogue of these phrases, by their English; a phrase that stands twice has one entry. */
export function catalogueOf(found: readonly FoundPhrase[]): Catalogue {
  const byKey = new Map<string, { in: Set<string>; puts: readonly string[] }>();
  for (const { key, file, puts } of found) {
    const entry = byKey.get(key) ?? { in: new Set<string>(), puts };
    entry.in.add(file);
    byKey.set(key, entry);
  }
  return Object.fromEntries(
    [...byKey]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, entry]) => [
        key,
        { in: [...entry.in].sort(), ...(entry.puts.length === 0 ? {} : { puts: entry.puts }) },
      ]),
  );
}

/** The file's text: one phrase a line, so that a change is seen as a line. */
export function catalogueText(catalogue: Catalogue): string {
  const lines = Object.entries(catalogue).map(([key, entry]) => `  ${JSON.stringify(key)}: ${JSON.stringify(entry)}`);
  return `{\n${lines.join(',\n')}\n}\n`;
}
