import type { Reader } from '#store/reader.ts';

export interface Screen {
  readonly screen: string;
  readonly requests: readonly (readonly [name: string, input: unknown])[];
}

/** What each screen asks for when it is opened, with rows from the middle of the kitchen's years. */
export function screens(read: Reader): Screen[] {
  const middle = (table: string) =>
    read.one<{ id: string }>(
      `SELECT id FROM ${table} ORDER BY id LIMIT 1 OFFSET (SELECT total / 2 FROM row_counts WHERE table_name = '${table}')`,
    )?.id ?? '';
  const trial = middle('trials');
  const jar = middle('jars');
  const tasting = middle('tastings');
  const frame = [
    ['kitchen:open', {}],
    ['undo:state', {}],
  ] as const;
  const one = (screen: string, ...requests: (readonly [string, unknown])[]): Screen => ({
    screen,
    requests: [...frame, ...requests],
  });
  return [
    one('Today', ['trials:list', {}], ['tastings:list', {}]),
    one('Trials', ['trials:list', {}]),
    one('Plan', ['bases:list', {}], ['pantry:list', {}], ['panel:experience', {}]),
    one('Trial', ['trials:open', { trial }], ['pantry:list', {}]),
    one('Jar', ['jars:open', { jar }], ['trials:open', { trial }]),
    one('Taste', ['trials:open', { trial }], ['tastings:list', {}], ['tasters:list', {}]),
    one('Sheet', ['tastings:open', { tasting }], ['scores:list', { tasting }], ['remarks:list', { tasting }]),
    one('Findings', ['trials:open', { trial }], ['findings:read', { trial }], ['tastings:list', {}]),
    one('House recipes', ['recipes:list', {}]),
    one('House recipe', ['recipes:open', { recipe: middle('house_recipes') }]),
    one('Bases', ['bases:list', {}], ['cultures:list', {}]),
    one('Pantry', ['pantry:list', {}]),
    one('Tasters', ['tasters:list', {}]),
    one('Data', ['backups:list', {}], ['bin:list', {}], ['history:read', { limit: 20 }], ['tasters:list', {}]),
  ];
}
