import type { Reader } from '#store/reader.ts';

export type Asked = readonly [name: string, input: unknown];

export interface Screen {
  readonly screen: string;
  /** What the screen asks for when it is opened; another row of the kitchen each round. */
  readonly requests: (round: number) => readonly Asked[];
}

/** What stands around every screen. */
const frame: readonly Asked[] = [
  ['kitchen:open', {}],
  ['undo:state', {}],
];

/** Some dozens of ids, spread over all the years of a table. */
function spread(read: Reader, table: string): string[] {
  const total = read.one<{ total: number }>('SELECT total FROM row_counts WHERE table_name = ?', table)?.total ?? 0;
  return Array.from(
    { length: Math.min(total, 40) },
    (_, at) =>
      read.one<{ id: string }>(`SELECT id FROM ${table} ORDER BY id LIMIT 1 OFFSET ?`, Math.floor((at * total) / 40))
        ?.id ?? '',
  );
}

/** What each screen asks for, as the pages in renderer/pages ask it. */
export function screens(read: Reader): Screen[] {
  const rows = Object.fromEntries(
    ['trials', 'jars', 'tastings', 'house_recipes', 'bases'].map((table) => [table, spread(read, table)]),
  );
  const row = (table: string, round: number) => rows[table]?.[round % (rows[table]?.length ?? 1)] ?? '';
  const trial = (round: number) => ({ trial: row('trials', round) });
  const standing = read
    .all<{ id: string }>('SELECT DISTINCT trial_id AS id FROM jars WHERE pulled_at IS NULL AND discarded_at IS NULL')
    .map(({ id }): Asked => ['trials:open', { trial: id }]);
  const trialOfJar = (jar: string) =>
    read.one<{ trial_id: string }>('SELECT trial_id FROM jars WHERE id = ?', jar)?.trial_id;
  const one = (screen: string, requests: (round: number) => readonly Asked[]): Screen => ({
    screen,
    requests: (round) => [...frame, ...requests(round)],
  });
  return [
    one('Today', () => [['trials:list', { only: 'awake' }], ['today:read', {}], ['pantry:list', {}], ...standing]),
    one('Trials', () => [['trials:list', { limit: 60 }]]),
    one('Plan', () => [
      ['bases:list', {}],
      ['pantry:list', {}],
      ['panel:experience', {}],
      ['drafts:open', { name: 'plan' }],
    ]),
    one('Trial', (round) => [
      ['trials:open', trial(round)],
      ['sheets:ofTrial', trial(round)],
      ['course:read', trial(round)],
      ['pantry:list', {}],
    ]),
    one('Jar', (round) => {
      const jar = row('jars', round);
      return [
        ['jars:open', { jar }],
        ['photos:ofJar', { jar }],
        ['trials:open', { trial: trialOfJar(jar) }],
      ];
    }),
    one('Photos', (round) => [['photos:ofTrial', trial(round)]]),
    one('Sips', () => [['trials:list', { only: 'awake' }], ...standing]),
    one('Taste', (round) => [
      ['trials:open', trial(round)],
      ['tastings:list', trial(round)],
      ['sips:byTrial', trial(round)],
    ]),
    one('Sheet', (round) => {
      const tasting = row('tastings', round);
      return [
        ['tastings:open', { tasting }],
        ['scores:list', { tasting }],
        ['remarks:list', { tasting }],
      ];
    }),
    one('Findings', (round) => [
      ['trials:open', trial(round)],
      ['findings:read', trial(round)],
      ['findings:places', trial(round)],
      ['findings:drivers', trial(round)],
      ['profiles:open', trial(round)],
      ['sips:byTrial', trial(round)],
      ['tastings:list', trial(round)],
    ]),
    one('House recipes', () => [['recipes:list', {}]]),
    one('House recipe', (round) => [
      ['recipes:open', { recipe: row('house_recipes', round) }],
      ['pantry:list', {}],
    ]),
    one('Bases', () => [
      ['bases:list', {}],
      ['cultures:list', {}],
    ]),
    one('Base', (round) => [
      ['bases:open', { base: row('bases', round) }],
      ['photos:ofJar', { base: row('bases', round) }],
      ['cultures:list', {}],
    ]),
    one('Bottles', () => [['bottles:list', {}]]),
    one('Pantry', () => [['pantry:list', {}]]),
    one('Tasters', () => [['tasters:list', {}]]),
    one('Find', (round) => [['kitchen:find', { words: `days ${round}` }]]),
    one('Data', () => [
      ['backups:list', {}],
      ['bin:list', {}],
      ['history:read', { limit: 20 }],
      ['tasters:list', {}],
    ]),
  ];
}
