/** The tables of cultures, bases, bottles and what is put off, as `tables` lists them. */
export const cellarTables = {
  cultures: {
    owners: [],
    columns: {
      name: 'text',
      kind: 'text',
      weight_g: 'number?',
      refreshed_at: 'text?',
      rests: 'text?',
      note: 'text?',
      refresh_days: 'number?',
      parent_id: 'text?',
    },
  },
  culture_log: {
    owners: [['cultures', 'culture_id']],
    columns: { culture_id: 'text', done_at: 'text', what: 'text', weight_g: 'number?', note: 'text?' },
  },
  bases: {
    owners: [],
    columns: {
      culture_id: 'text?',
      name: 'text',
      made_at: 'text',
      strained_at: 'text?',
      volume_mL: 'number',
      temperature_C: 'number?',
      sugar_start_g_per_L: 'number?',
      sugar_now_g_per_L: 'number?',
      alcohol_pctVol: 'number?',
      note: 'text?',
      planned_hours: 'number?',
      went_in: 'text?',
    },
  },
} as const;

/** Tables whose rows belong to rows of tables that come before them. */
export const laterCellarTables = {
  snoozes: {
    owners: [
      ['jars', 'jar_id'],
      ['bases', 'base_id'],
      ['cultures', 'culture_id'],
      ['tastings', 'tasting_id'],
    ],
    columns: {
      jar_id: 'text?',
      base_id: 'text?',
      culture_id: 'text?',
      tasting_id: 'text?',
      need: 'text',
      until_at: 'text',
      reason: 'text?',
    },
  },
  bottlings: {
    owners: [
      ['jars', 'jar_id'],
      ['batches', 'batch_id'],
    ],
    columns: {
      jar_id: 'text?',
      batch_id: 'text?',
      bottled_at: 'text',
      count: 'number',
      size_mL: 'number',
      closure: 'text',
      rated_gauge_bar: 'number?',
      lot: 'text?',
      sugar_g_per_L: 'number?',
      chilled_at: 'text?',
      note: 'text?',
    },
  },
  bottle_openings: {
    owners: [['bottlings', 'bottling_id']],
    columns: { bottling_id: 'text', opened_at: 'text', pour: 'text', note: 'text?' },
  },
} as const;
