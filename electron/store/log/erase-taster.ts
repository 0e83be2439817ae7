import { phrase } from '#core/words/phrase.ts';
import type { Kitchen } from '../kitchen.ts';
import type { Value } from '../statements.ts';
import type { Row, TableName } from '../tables.ts';
import type { Writer } from '../writer.ts';
import { rangesOf } from './entry-ranges.ts';

function wholeWords(name: string): RegExp {
  const escaped = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\p{N}])${escaped}(?![\\p{L}\\p{N}])`, 'giu');
}

/** A name that nobody has: “Nameless taster 1” and on. */
function namelessName(writer: Writer): string {
  for (let number = 1; ; number += 1) {
    const name = phrase`Nameless taster ${number}`;
    if (writer.one('SELECT id FROM tasters WHERE name = ?', name) === undefined) return name;
  }
}

/** Every name the taster went by, as long as the log remembers. */
function namesOf(writer: Writer, taster: string): string[] {
  const rows = writer.all<{ text: string }>(
    `SELECT coalesce(after, before) AS text FROM changes WHERE table_name = 'tasters' AND row_id = ? AND commitment IS NULL`,
    taster,
  );
  return [...new Set(rows.map(({ text }) => String((JSON.parse(text) as { name: string }).name)))];
}

/** History's lines about these rows, or any that say the name, without it. */
function clearSummaries(kitchen: Kitchen, rows: readonly (readonly [TableName, string])[], names: readonly string[]) {
  const aboutRow = kitchen.db
    .prepare('SELECT DISTINCT step_id FROM changes WHERE table_name = ? AND row_id = ?')
    .pluck();
  const about = new Set(rows.flatMap(([table, id]) => aboutRow.all(table, id) as number[]));
  const update = kitchen.db.prepare('UPDATE steps SET summary = ? WHERE id = ?');
  const steps = kitchen.db.prepare('SELECT id, summary FROM steps').all() as { id: number; summary: string }[];
  for (const { id, summary } of steps) {
    // What was said when somebody was set aside is about them, whatever its words.
    const aside = about.has(id) ? summary.replace(/(Set .+ aside): .*$/u, '$1') : summary;
    const cleared = names.reduce((text, name) => text.replace(wholeWords(name), 'a taster'), aside);
    if (cleared !== summary) update.run(cleared, id);
  }
}

/** Half-made sheets go by the taster's name: they get the new one, and stay whole. */
function renameInDrafts(kitchen: Kitchen, names: readonly string[], nameless: string): void {
  const drafts = kitchen.db.prepare('SELECT name, body FROM drafts').all() as { name: string; body: string }[];
  for (const { name, body } of drafts) {
    const cleared = names.reduce(
      (text, each) => text.replace(wholeWords(JSON.stringify(each).slice(1, -1)), nameless),
      body,
    );
    if (cleared !== body) kitchen.db.prepare('UPDATE drafts SET body = ? WHERE name = ?').run(cleared, name);
  }
}

/**
 * Erases a taster for good: the name, what they avoid, the note on them, their remarks, and why they were set aside. Their scores,
 * choices and places in the orders stay, under a nameless name, so that no finding changes.
 *
 * Method: the rows are changed, the log's earlier entries of them are blanked (the chain holds by their commitments, whose salt is
 * thrown away), an entry in `erasures` says which, and the file is written anew so that no free page holds the name either.
 * Leaves out: names inside other texts (a tasting's title, a note on a jar), and copies made before, which still hold everything.
 *
 * @returns the name that stands now, and how many entries of the log were blanked
 */
export function eraseTaster(kitchen: Kitchen, row: Row<'tasters'>): { name: string; entries: number } {
  const done = kitchen.write(
    {
      request: 'tasters:erase',
      summary: phrase`Erase a taster for good`,
      fixedBecause: phrase`an erased name is gone.`,
    },
    (writer) => {
      const names = namesOf(writer, row.id);
      const name = namelessName(writer);
      const rowsOf = (table: 'remarks' | 'set_asides') =>
        writer.all<{ row_id: string }>(
          `SELECT DISTINCT row_id FROM changes WHERE table_name = '${table}' AND commitment IS NULL
           AND json_extract(coalesce(after, before), '$.taster_id') = ?`,
          row.id,
        );
      const remarks = rowsOf('remarks').map(({ row_id }) => ['remarks', row_id] as const);
      const asides = rowsOf('set_asides').map(({ row_id }) => ['set_asides', row_id] as const);
      clearSummaries(kitchen, [['tasters', row.id], ...remarks, ...asides], names);
      renameInDrafts(kitchen, names, name);
      const nameless = { ...row, name, avoids: '[]', avoids_alcohol: 0, note: null, revision: row.revision + 1 };
      const entries = writer.forget('tasters', row.id, nameless);
      for (const [table, id] of remarks) entries.push(...writer.forget(table, id, null));
      for (const [table, id] of asides) {
        const aside = writer.row(table, id);
        const kept = aside === undefined ? null : { ...aside, reason: phrase`Erased`, revision: aside.revision + 1 };
        entries.push(...writer.forget(table, id, kept as Record<string, Value> | null));
      }
      writer.insert('erasures', { what: 'taster', entries: rangesOf(entries) });
      return { name, entries: entries.length };
    },
  );
  // Freed pages and the write-ahead log would still hold the old text.
  kitchen.db.exec('VACUUM');
  kitchen.db.pragma('wal_checkpoint(TRUNCATE)');
  return done;
}
