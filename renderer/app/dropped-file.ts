import { phrase } from '#core/words/phrase.ts';

/** Where a dropped file goes, or what to say of it. */
export type DropAnswer = { readonly go: string } | { readonly say: string } | { readonly opens: 'kitchen' };

const words = {
  nowhere: phrase`A table can be dropped on a tasting’s page (scores) or on a trial’s page (readings).`,
  unknown: phrase`Files that can be dropped here: a kitchen, a trial or kitchen.json, and tables as CSV, TSV or JSON on a trial or a tasting.`,
} as const;

/**
 * Which page takes a file, by its ending and by the page it was dropped on.
 *
 * @example droppedFile('scores.csv', '/tastings/1') // { go: '/tastings/1/import' }
 */
export function droppedFile(name: string, place: string): DropAnswer {
  const ending = /\.([a-z-]+)$/i.exec(name)?.[1]?.toLowerCase() ?? '';
  if (ending === 'sidejar') return { opens: 'kitchen' };
  if (ending === 'sidejar-trial' || name.toLowerCase() === 'kitchen.json') return { go: '/data' };
  if (!['csv', 'tsv', 'txt', 'json'].includes(ending)) return { say: words.unknown };
  const tasting = /^\/tastings\/([^/]+)/.exec(place)?.[1];
  const trial = /^\/trials\/(?!new)([^/]+)/.exec(place)?.[1];
  if (tasting !== undefined) return { go: `/tastings/${tasting}/import` };
  return trial === undefined ? { say: words.nowhere } : { go: `/trials/${trial}/readings` };
}
