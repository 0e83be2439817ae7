import type { RecordedTable } from '#shared/recorded-tables.ts';
import { cellarTables, laterCellarTables } from './cellar-tables.ts';
import { pantryTables } from './pantry-tables.ts';

// What the store's functions know of each table. A test holds this list against the real schema.

interface TableShape {
  /** The rows this row is part of: removed together with any of them. */
  readonly owners: readonly (readonly [table: string, column: string])[];
  readonly columns: { readonly [column: string]: 'text' | 'text?' | 'number' | 'number?' | 'flag' };
}

export const tables = {
  kitchens: { owners: [], columns: { name: 'text', measures: 'text', currency: 'text?' } },
  tasters: { owners: [], columns: { name: 'text', avoids: 'text', avoids_alcohol: 'flag', note: 'text?' } },
  ...pantryTables,
  ...cellarTables,
  trials: {
    owners: [],
    columns: {
      question: 'text',
      factor: 'text',
      calendar: 'text',
      base_id: 'text?',
      base_each_mL: 'number',
      replicates: 'number',
      vessel_kind: 'text',
      vessel_capacity_mL: 'number',
      vessel_diameter_mm: 'number?',
      vessel_rated_gauge_bar: 'number?',
      starts_at: 'text',
      held: 'text',
      seed: 'number',
      closed_at: 'text?',
      note: 'text?',
    },
  },
  levels: {
    owners: [['trials', 'trial_id']],
    columns: {
      trial_id: 'text',
      position: 'number',
      name: 'text',
      value: 'number?',
      is_control: 'flag',
      formula: 'text',
    },
  },
  jars: {
    owners: [['levels', 'level_id']],
    columns: {
      trial_id: 'text',
      level_id: 'text',
      label: 'text',
      replicate: 'number',
      base_mL: 'number',
      planned_start: 'text',
      planned_pull: 'text',
      started_at: 'text?',
      pulled_at: 'text?',
      strained_at: 'text?',
      discarded_at: 'text?',
      discard_reason: 'text?',
    },
  },
  readings: {
    owners: [
      ['jars', 'jar_id'],
      ['bases', 'base_id'],
    ],
    columns: {
      jar_id: 'text?',
      base_id: 'text?',
      taken_at: 'text',
      brix: 'number?',
      sg: 'number?',
      ph: 'number?',
      acidity_g_per_L: 'number?',
      acidity_as: 'text?',
      temperature_C: 'number?',
      note: 'text?',
    },
  },
  sightings: {
    owners: [
      ['jars', 'jar_id'],
      ['bases', 'base_id'],
    ],
    columns: {
      jar_id: 'text?',
      base_id: 'text?',
      seen_at: 'text',
      what: 'text',
      note: 'text?',
      corrected_at: 'text?',
      correction: 'text?',
    },
  },
  sips: {
    owners: [['jars', 'jar_id']],
    columns: {
      jar_id: 'text',
      taken_at: 'text',
      tang: 'number?',
      fizz: 'number?',
      sweetness: 'number?',
      liking: 'number?',
      note: 'text?',
    },
  },
  photos: {
    owners: [
      ['jars', 'jar_id'],
      ['bases', 'base_id'],
    ],
    columns: {
      jar_id: 'text?',
      base_id: 'text?',
      taken_at: 'text',
      sha256: 'text',
      format: 'text',
      width: 'number',
      height: 'number',
      bytes: 'number',
      note: 'text?',
    },
  },
  tastings: {
    owners: [['trials', 'trial_id']],
    columns: {
      trial_id: 'text?',
      name: 'text',
      held_at: 'text',
      served_C: 'number?',
      replicates: 'number',
      seed: 'number',
      closed_at: 'text?',
      note: 'text?',
    },
  },
  attributes: {
    owners: [['tastings', 'tasting_id']],
    columns: {
      tasting_id: 'text',
      position: 'number',
      name: 'text',
      kind: 'text',
      low: 'number',
      high: 'number',
      low_word: 'text?',
      high_word: 'text?',
    },
  },
  samples: {
    owners: [['tastings', 'tasting_id']],
    columns: {
      tasting_id: 'text',
      jar_id: 'text',
      blind_code: 'text',
      served_mL: 'number?',
      taken_out_at: 'text?',
      taken_out_why: 'text?',
    },
  },
  servings: {
    owners: [['tastings', 'tasting_id']],
    columns: { tasting_id: 'text', taster_id: 'text', sample_id: 'text', sitting: 'number', place: 'number' },
  },
  scores: {
    owners: [['tastings', 'tasting_id']],
    columns: {
      tasting_id: 'text',
      taster_id: 'text',
      sample_id: 'text',
      attribute_id: 'text',
      replicate: 'number',
      score: 'number',
    },
  },
  remarks: {
    owners: [['tastings', 'tasting_id']],
    columns: { tasting_id: 'text', taster_id: 'text', sample_id: 'text', words: 'text' },
  },
  wishes: {
    owners: [['trials', 'trial_id']],
    columns: {
      trial_id: 'text',
      attribute: 'text',
      goal: 'text',
      low: 'number',
      high: 'number',
      target: 'number?',
      importance: 'number',
    },
  },
  set_asides: {
    owners: [['trials', 'trial_id']],
    columns: { trial_id: 'text', taster_id: 'text', reason: 'text' },
  },
  discriminations: {
    owners: [['trials', 'trial_id']],
    columns: {
      trial_id: 'text?',
      name: 'text',
      method: 'text',
      asked: 'text?',
      expected: 'text?',
      jar_a_id: 'text',
      jar_b_id: 'text',
      held_at: 'text',
      seed: 'number',
      closed_at: 'text?',
    },
  },
  presentations: {
    owners: [['discriminations', 'discrimination_id']],
    columns: {
      discrimination_id: 'text',
      taster_id: 'text',
      round: 'number',
      cups: 'text',
      codes: 'text',
      chosen: 'number?',
    },
  },
  house_recipes: { owners: [], columns: { name: 'text', note: 'text?' } },
  recipe_versions: {
    owners: [['house_recipes', 'recipe_id']],
    columns: {
      recipe_id: 'text',
      number: 'number',
      formula: 'text',
      base_mL: 'number',
      volume_mL: 'number',
      vessel: 'text',
      target: 'text',
      basis: 'text',
      trial_id: 'text?',
      level_id: 'text?',
      why: 'text?',
    },
  },
  version_sources: {
    owners: [['recipe_versions', 'version_id']],
    columns: { version_id: 'text', jar_id: 'text', tasting_id: 'text?' },
  },
  batches: {
    owners: [['recipe_versions', 'version_id']],
    columns: { version_id: 'text', made_at: 'text', volume_mL: 'number', lot: 'text?', note: 'text?' },
  },
  erasures: { owners: [], columns: { what: 'text', entries: 'text' } },
  ...laterCellarTables,
} as const satisfies Record<RecordedTable, TableShape>;

export type TableName = keyof typeof tables;

type Held<Kind> = Kind extends 'text'
  ? string
  : Kind extends 'text?'
    ? string | null
    : Kind extends 'number'
      ? number
      : Kind extends 'number?'
        ? number | null
        : 0 | 1;

/** The columns a person's data fills. */
export type Columns<Table extends TableName> = {
  -readonly [Column in keyof (typeof tables)[Table]['columns']]: Held<(typeof tables)[Table]['columns'][Column]>;
};

/** A stored row: its data, and the four columns that every row has. */
export type Row<Table extends TableName> = Columns<Table> & {
  id: string;
  revision: number;
  is_sample: 0 | 1;
  created_at: string;
};

export const tableNames = Object.keys(tables) as TableName[];

/** The columns of a table in a fixed order, the four common ones first. */
export function columnNames(table: TableName): string[] {
  return ['id', 'revision', 'is_sample', 'created_at', ...Object.keys(tables[table].columns)];
}

/** The tables whose rows are part of a row of `table`. */
export function ownedTables(table: TableName): { table: TableName; column: string }[] {
  return tableNames.flatMap((name) => {
    const owners: readonly (readonly [string, string])[] = tables[name].owners;
    return owners.filter(([owner]) => owner === table).map(([, column]) => ({ table: name, column }));
  });
}
