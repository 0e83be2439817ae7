import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Reader } from '../reader.ts';
import type { Value } from '../statements.ts';
import type { TableName } from '../tables.ts';

type Rows = Record<string, Value>[];

/** Everything that belongs to a trial, and what it needs from the rest of the kitchen. `?` is the trial. */
const belongs: readonly (readonly [TableName, string])[] = [
  // A culture and those it was split from: without them its lineage would lead nowhere.
  [
    'cultures',
    `WITH RECURSIVE up (id) AS (
       SELECT b.culture_id FROM bases AS b JOIN trials AS t ON t.base_id = b.id WHERE t.id = ?
       UNION SELECT c.parent_id FROM cultures AS c JOIN up ON up.id = c.id
     ) SELECT c.* FROM cultures AS c JOIN up ON up.id = c.id`,
  ],
  ['bases', 'SELECT b.* FROM bases AS b JOIN trials AS t ON t.base_id = b.id WHERE t.id = ?'],
  ['trials', 'SELECT * FROM trials WHERE id = ?'],
  ['levels', 'SELECT * FROM levels WHERE trial_id = ?'],
  ['jars', 'SELECT * FROM jars WHERE trial_id = ?'],
  ['readings', 'SELECT r.* FROM readings AS r JOIN jars AS j ON j.id = r.jar_id WHERE j.trial_id = ?'],
  ['sightings', 'SELECT r.* FROM sightings AS r JOIN jars AS j ON j.id = r.jar_id WHERE j.trial_id = ?'],
  ['sips', 'SELECT r.* FROM sips AS r JOIN jars AS j ON j.id = r.jar_id WHERE j.trial_id = ?'],
  ['bottlings', 'SELECT r.* FROM bottlings AS r JOIN jars AS j ON j.id = r.jar_id WHERE j.trial_id = ?'],
  [
    'bottle_openings',
    'SELECT o.* FROM bottle_openings AS o JOIN bottlings AS r ON r.id = o.bottling_id JOIN jars AS j ON j.id = r.jar_id WHERE j.trial_id = ?',
  ],
  // What is put off (snoozes) is the household's own day and stays at home.
  // Their files go along in the carried file, as far as it has room.
  ['photos', 'SELECT r.* FROM photos AS r JOIN jars AS j ON j.id = r.jar_id WHERE j.trial_id = ?'],
  ['tastings', 'SELECT * FROM tastings AS g WHERE g.trial_id = ? AND @whole'],
  [
    'attributes',
    'SELECT r.* FROM attributes AS r JOIN tastings AS g ON g.id = r.tasting_id WHERE g.trial_id = ? AND @whole',
  ],
  ['samples', 'SELECT r.* FROM samples AS r JOIN tastings AS g ON g.id = r.tasting_id WHERE g.trial_id = ? AND @whole'],
  [
    'servings',
    'SELECT r.* FROM servings AS r JOIN tastings AS g ON g.id = r.tasting_id WHERE g.trial_id = ? AND @whole',
  ],
  ['scores', 'SELECT r.* FROM scores AS r JOIN tastings AS g ON g.id = r.tasting_id WHERE g.trial_id = ? AND @whole'],
  ['remarks', 'SELECT r.* FROM remarks AS r JOIN tastings AS g ON g.id = r.tasting_id WHERE g.trial_id = ? AND @whole'],
  ['wishes', 'SELECT * FROM wishes WHERE trial_id = ?'],
  ['set_asides', 'SELECT * FROM set_asides WHERE trial_id = ?'],
  ['discriminations', 'SELECT * FROM discriminations AS d WHERE d.trial_id = ? AND @both'],
  [
    'presentations',
    'SELECT p.* FROM presentations AS p JOIN discriminations AS d ON d.id = p.discrimination_id WHERE d.trial_id = ? AND @both',
  ],
];

// A tasting that also poured jars of another trial would arrive with holes: it stays at home.
const wholeTasting = `NOT EXISTS (SELECT 1 FROM samples AS x JOIN jars AS y ON y.id = x.jar_id WHERE x.tasting_id = g.id AND y.trial_id <> g.trial_id)`;
const bothJars = `NOT EXISTS (SELECT 1 FROM jars AS y WHERE y.id IN (d.jar_a_id, d.jar_b_id) AND y.trial_id <> d.trial_id)`;

/** Who tasted, asked of the rows that go along. */
function tastersOf(read: Reader, rows: ReadonlyMap<TableName, Rows>): Rows {
  const ids = new Set<string>();
  for (const table of ['servings', 'scores', 'remarks', 'set_asides', 'presentations'] as const) {
    for (const row of rows.get(table) ?? []) ids.add(String(row.taster_id));
  }
  return [...ids].flatMap((id) => read.row('tasters', id) ?? []) as unknown as Rows;
}

/** Ingredients of the owner's own that the trial's formulas name. */
function ingredientsOf(read: Reader, rows: ReadonlyMap<TableName, Rows>): Rows {
  const texts = [
    ...(rows.get('levels') ?? []).map((row) => row.formula),
    ...(rows.get('trials') ?? []).map((row) => row.held),
  ];
  const names = new Set(
    texts.flatMap((text) => {
      const { additions = [] } = JSON.parse(String(text ?? '{}')) as { additions?: { ingredient: unknown }[] };
      return additions.flatMap(({ ingredient }) => (typeof ingredient === 'string' ? [ingredient] : []));
    }),
  );
  return [...names].flatMap((name) => {
    const row = read.one<Record<string, Value>>('SELECT * FROM ingredients WHERE name = ?', name);
    return row === undefined ? [] : [row];
  });
}

export interface TrialRows {
  readonly rows: ReadonlyMap<TableName, Rows>;
  /** Tastings and tests that poured jars of other trials too, and so stay at home. */
  readonly left: readonly string[];
}

/**
 * The rows of one trial, whole in themselves: whoever takes them in needs nothing else.
 *
 * @throws Failure `not-found`
 */
export function trialRows(read: Reader, trial: string): TrialRows {
  if (read.row('trials', trial) === undefined)
    throw new Failure('not-found', phrase`There is no such trial in this kitchen.`, ['trial']);
  const rows = new Map<TableName, Rows>();
  for (const [table, sql] of belongs) {
    const text = sql.replace('@whole', wholeTasting).replace('@both', bothJars);
    rows.set(table, read.all<Record<string, Value>>(text, trial));
  }
  rows.set('tasters', tastersOf(read, rows));
  rows.set('ingredients', ingredientsOf(read, rows));
  const left = read.all<{ name: string }>(
    `SELECT g.name FROM tastings AS g WHERE g.trial_id = ? AND NOT (${wholeTasting})
     UNION ALL SELECT d.name FROM discriminations AS d WHERE d.trial_id = ? AND NOT (${bothJars})`,
    trial,
    trial,
  );
  return { rows, left: left.map(({ name }) => name) };
}
