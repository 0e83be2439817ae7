import { pantryTable } from '#core/pantry/pantry-table.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '#store/reader.ts';
import type { Handlers } from '../handler.ts';

type Found = ValueOf<'kitchen:find'>['found'][number];
type Candidate = Found & { readonly text?: string };

/** Letters without their marks, in lower case. */
function plain(words: string): string {
  return words.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
}

/** Jars are looked for in the latest trials only: an older one is found through its trial. */
const latestTrials = 400;

function called(jar: Candidate): Candidate {
  return { ...jar, name: phrase`Jar ${jar.name}` };
}

/** The jar whose label's code was scanned. */
function scannedJar(read: Reader, code: string): Found[] {
  return read
    .all<Found>(
      `SELECT 'jar' AS kind, j.id, j.label AS name, l.name || ', ' || t.question AS facts
       FROM jars AS j JOIN levels AS l ON l.id = j.level_id JOIN trials AS t ON t.id = j.trial_id WHERE j.id = ?`,
      code,
    )
    .map(called);
}

const sources: readonly ((read: Reader) => Candidate[])[] = [
  (read) =>
    read.all<Candidate>(
      "SELECT 'trial' AS kind, id, question AS name, factor AS facts FROM trials ORDER BY starts_at DESC",
    ),
  (read) =>
    read
      .all<Candidate>(
        `SELECT 'jar' AS kind, j.id, j.label AS name, l.name || ', ' || t.question AS facts
       FROM (SELECT * FROM trials ORDER BY starts_at DESC LIMIT ${latestTrials}) AS t
       JOIN levels AS l ON l.trial_id = t.id JOIN jars AS j ON j.level_id = l.id ORDER BY t.starts_at DESC, j.label`,
      )
      .map(called),
  (read) =>
    read.all<Candidate>(
      "SELECT 'tasting' AS kind, id, name, substr(held_at, 1, 10) AS facts FROM tastings ORDER BY held_at DESC",
    ),
  (read) =>
    read.all<Candidate>("SELECT 'taster' AS kind, id, name, coalesce(note, '') AS facts FROM tasters ORDER BY name"),
  (read) =>
    read.all<Candidate>(
      "SELECT 'house-recipe' AS kind, id, name, coalesce(note, '') AS facts FROM house_recipes ORDER BY name",
    ),
  (read) =>
    read.all<Candidate>(
      "SELECT 'base' AS kind, id, name, substr(made_at, 1, 10) AS facts FROM bases ORDER BY made_at DESC",
    ),
  (read) => read.all<Candidate>("SELECT 'culture' AS kind, id, name, kind AS facts FROM cultures ORDER BY name"),
  (read) => read.all<Candidate>("SELECT 'ingredient' AS kind, id, name, kind AS facts FROM ingredients ORDER BY name"),
  () =>
    pantryTable.map(({ name, category, aliases }) => ({
      kind: 'ingredient' as const,
      id: null,
      name,
      facts: category,
      text: aliases.join(' '),
    })),
];

/** How well a name answers: 0 it begins with the first word, 1 one of its words does, 2 elsewhere. */
function closeness(name: string, first: string): number {
  if (name.startsWith(first)) return 0;
  return name.includes(` ${first}`) ? 1 : 2;
}

export const findHandlers: Handlers<'kitchen:find'> = {
  'kitchen:find'(kitchen, { words, most }) {
    const scanned = scannedJar(kitchen.read, words.toLowerCase());
    if (scanned.length > 0) return { found: scanned, more: 0 };
    const wanted = plain(words).split(/\s+/);
    const [first = ''] = wanted;
    const matches: { found: Found; close: number }[] = [];
    for (const source of sources) {
      for (const { text = '', ...found } of source(kitchen.read)) {
        const whole = plain(`${found.name} ${found.facts} ${text}`);
        if (wanted.every((word) => whole.includes(word)))
          matches.push({ found, close: closeness(plain(found.name), first) });
      }
    }
    // The order of the sources and of their rows stays within one closeness.
    const sorted = matches
      .map((match, place) => ({ ...match, place }))
      .sort((a, b) => a.close - b.close || a.place - b.place);
    return { found: sorted.slice(0, most).map(({ found }) => found), more: Math.max(0, sorted.length - most) };
  },
};
