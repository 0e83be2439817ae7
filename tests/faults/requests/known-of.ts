import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deskOf } from '#desk/desk.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { tableNames } from '#store/tables.ts';
import type { Known } from './arbitrary-of.ts';

const alsoCalled: Readonly<Record<string, readonly string[]>> = {
  jars: ['jar', 'jarA', 'jarB'],
  tasters: ['taster'],
  trials: ['trial'],
  tastings: ['tasting'],
  levels: ['level'],
  bases: ['base'],
  cultures: ['culture'],
  house_recipes: ['recipe'],
  recipe_versions: ['version'],
  discriminations: ['discrimination'],
  readings: ['reading'],
  sightings: ['sighting'],
  sips: ['sip'],
  ingredients: ['ingredient'],
  stocks: ['stock'],
};

/** What a made-up request can refer to: the kitchen's own rows, and places inside one folder. */
export async function knownOf(kitchen: Kitchen, folder: string): Promise<Known> {
  const ids: Record<string, string[]> = {};
  const names = new Set<string>(['liking', 'tang', 'fizz', 'strawberries', 'sugar', 'A', 'B']);
  for (const table of tableNames) {
    const own = kitchen.read.all<{ id: string }>(`SELECT id FROM ${table} LIMIT 40`).map(({ id }) => id);
    for (const field of [table, ...(alsoCalled[table] ?? [])]) ids[field] = [...(ids[field] ?? []), ...own];
  }
  for (const [table, column] of [
    ['tasters', 'name'],
    ['levels', 'name'],
    ['jars', 'label'],
    ['samples', 'blind_code'],
    ['attributes', 'name'],
    ['ingredients', 'name'],
  ] as const) {
    for (const { word } of kitchen.read.all<{ word: string }>(`SELECT ${column} AS word FROM ${table} LIMIT 12`))
      names.add(word);
  }
  const trial = ids.trials?.[0] ?? '';
  const file = await deskOf(kitchen).handle('data:trialFile', { trial });
  const carried = join(folder, 'one.sidejar-trial');
  writeFileSync(carried, file.ok ? (file.value as { text: string }).text : '{}');
  const places = [
    carried,
    'new',
    'deep/er/new',
    'k.sidejar',
    '.',
    'a\0b',
    '/dev/null/none',
    '/dev/null',
    '/proc/version',
    'y'.repeat(300),
  ];
  return { ids, names: [...names], places };
}
