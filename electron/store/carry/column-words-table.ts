import { columnNames, type TableName, tableNames, tables } from '../tables.ts';

// What every column of an export means. A test asks that each has words and that none is of a column gone.

const everyRow: Readonly<Record<string, string>> = {
  id: 'Identifier of the row: UUID version 7, the same in every kitchen that holds the row',
  revision: 'Edition of the row, counted from 1',
  is_sample: '1 when the row belongs to the invented sample kitchen, else 0',
  created_at: 'When the row was first written (UTC)',
  note: 'Remark in the owner’s own words',
  name: 'Name given by the owner',
};

const own: Readonly<Partial<Record<TableName, Readonly<Record<string, string>>>>> = {
  kitchens: {
    measures: 'Which measures the screens show: metric or us',
    currency: 'How prices are written; empty: nobody said',
  },
  tasters: { avoids: 'Allergens the taster avoids (JSON list)', avoids_alcohol: '1 when the taster avoids alcohol' },
  ingredients: {
    kind: 'Kind of ingredient',
    water_g: 'Water in 100 g (g); empty: unknown',
    sugars_g: 'All sugars in 100 g (g); empty: unknown',
    sucrose_g: 'Sucrose in 100 g (g); empty: unknown',
    glucose_g: 'Glucose in 100 g (g); empty: unknown',
    fructose_g: 'Fructose in 100 g (g); empty: unknown',
    fibre_g: 'Fibre in 100 g (g); empty: unknown',
    protein_g: 'Protein in 100 g (g); empty: unknown',
    fat_g: 'Fat in 100 g (g); empty: unknown',
    ash_g: 'Ash in 100 g (g); empty: unknown',
    allergens: 'Allergens it brings (JSON list)',
    source: 'Where its figures come from',
    measures: 'What a kitchen measure of it weighs (JSON list of unit, form and mass in g); empty: unknown',
  },
  stocks: {
    on_hand_g: 'Mass on hand (g); empty: not counted',
    price_per_kg: 'Price for 1 kg, in the kitchen’s currency',
    price_per_L: 'Price for 1 L, in the kitchen’s currency',
    short_g: 'Mass used beyond what was noted (g); empty: none',
  },
  cultures: {
    kind: 'Kind of culture',
    weight_g: 'Drained weight (g)',
    refreshed_at: 'When it was last refreshed (UTC)',
    rests: 'Where it rests',
  },
  bases: {
    culture_id: 'Culture it was made with',
    made_at: 'When its first ferment was started (UTC)',
    strained_at: 'When it was strained (UTC)',
    volume_mL: 'Volume made (mL)',
    temperature_C: 'Temperature of the first ferment (°C)',
    sugar_start_g_per_L: 'Sugar at the start (g/L)',
    sugar_now_g_per_L: 'Sugar when last known (g/L)',
    alcohol_pctVol: 'Alcohol when last known (% vol)',
  },
  trials: {
    question: 'The question the trial asks',
    factor: 'The one thing that differs between levels',
    calendar: 'Whether starts or pulls are staggered',
    base_id: 'Base that its jars are filled from',
    base_each_mL: 'Base in each jar (mL)',
    replicates: 'Jars of each level',
    vessel_kind: 'Kind of vessel',
    vessel_capacity_mL: 'Capacity of the vessel (mL)',
    vessel_diameter_mm: 'Diameter of the vessel (mm)',
    vessel_rated_gauge_bar: 'Pressure the vessel is made for (bar above the air’s); empty: not rated',
    starts_at: 'When the trial starts (UTC)',
    held: 'What is held equal in every jar (JSON)',
    seed: 'Seed of the fill order',
    closed_at: 'When the trial was closed (UTC)',
  },
  levels: {
    trial_id: 'Trial it belongs to',
    position: 'Place among the trial’s levels, from 1',
    value: 'Its number on the factor’s line: days, grams or °C',
    is_control: '1 for the control',
    formula: 'What a jar of this level holds (JSON)',
  },
  jars: {
    trial_id: 'Trial it belongs to',
    level_id: 'Level it belongs to',
    label: 'Open label on the jar',
    replicate: 'Which jar of its level, from 1',
    base_mL: 'Base in the jar (mL)',
    planned_start: 'When it was to be started (UTC)',
    planned_pull: 'When it was to be pulled (UTC)',
    started_at: 'When it was started (UTC)',
    pulled_at: 'When it was pulled (UTC)',
    strained_at: 'When its fruit was strained out (UTC)',
    discarded_at: 'When it was discarded (UTC)',
    discard_reason: 'Why it was discarded',
  },
  readings: {
    jar_id: 'Jar that was measured',
    base_id: 'Base that was measured',
    taken_at: 'When (UTC)',
    brix: 'Refractometer or hydrometer reading (°Bx)',
    sg: 'Specific gravity 20/20 °C',
    ph: 'pH of the contents',
    acidity_g_per_L: 'Titratable acidity (g/L)',
    acidity_as: 'Acid that the acidity is given as',
    temperature_C: 'Temperature of the contents (°C)',
  },
  sightings: {
    jar_id: 'Jar it was seen in',
    base_id: 'Base it was seen in',
    seen_at: 'When (UTC)',
    what: 'What was seen',
  },
  sips: {
    jar_id: 'Jar that was sipped from',
    taken_at: 'When (UTC)',
    tang: 'Tang, 0 to 10',
    fizz: 'Fizz, 0 to 10',
    sweetness: 'Sweetness, 0 to 10',
    liking: 'Liking, 1 to 9',
  },
  tastings: {
    trial_id: 'Trial it was held for',
    held_at: 'When it was held (UTC)',
    served_C: 'Serving temperature (°C)',
    replicates: 'Servings of each sample to each taster',
    seed: 'Seed of codes and serving orders',
    closed_at: 'When its codes were revealed (UTC); empty: still open',
  },
  attributes: {
    tasting_id: 'Tasting it was asked in',
    position: 'Place on the sheet, from 1',
    kind: 'scale, just-about-right (−2 to 2) or place (1 is best)',
    low: 'Lower end of the scale',
    high: 'Upper end of the scale',
    low_word: 'Word at the lower end',
    high_word: 'Word at the upper end',
  },
  samples: {
    tasting_id: 'Tasting it was served in',
    jar_id: 'Jar it was poured from',
    blind_code: 'Three-digit code on the cup',
    served_mL: 'Volume in the cup (mL)',
  },
  servings: {
    tasting_id: 'Tasting',
    taster_id: 'Who was served',
    sample_id: 'What was served',
    sitting: 'Sitting, from 1',
    place: 'Place in the serving order, from 1',
  },
  scores: {
    tasting_id: 'Tasting',
    taster_id: 'Who scored',
    sample_id: 'What was scored',
    attribute_id: 'On which attribute',
    replicate: 'Which of the taster’s servings, from 1',
    score: 'The score, between the attribute’s ends',
  },
  remarks: { tasting_id: 'Tasting', taster_id: 'Who said it', sample_id: 'Of which sample', words: 'What was said' },
  wishes: {
    trial_id: 'Trial',
    attribute: 'Attribute the wish is about',
    goal: 'more, less or target',
    low: 'Lower end of the wish',
    high: 'Upper end of the wish',
    target: 'Target, where the goal is one',
    importance: 'How many times it counts',
  },
  set_asides: { trial_id: 'Trial', taster_id: 'Taster whose scores are not counted', reason: 'Why' },
  discriminations: {
    trial_id: 'Trial it was held for',
    method: 'Test: triangle, duo-trio, paired or paired-two-sided',
    asked: 'What the tasters were asked',
    expected: 'Jar expected to be chosen in a one-sided paired test',
    jar_a_id: 'Jar A',
    jar_b_id: 'Jar B',
    held_at: 'When it was held (UTC)',
    seed: 'Seed of codes and orders',
    closed_at: 'When it was revealed (UTC); empty: still open',
  },
  presentations: {
    discrimination_id: 'Test',
    taster_id: 'Who was served',
    round: 'Which tray of the taster, from 1',
    cups: 'Order of the cups, A and B',
    codes: 'Codes on the cups (JSON list)',
    chosen: 'Which cup was chosen, from 1; empty: not answered',
  },
  recipe_versions: {
    recipe_id: 'House recipe it is a version of',
    number: 'Number of the version, from 1',
    formula: 'What it holds (JSON)',
    base_mL: 'Base (mL)',
    volume_mL: 'Volume it makes (mL)',
    vessel: 'Vessel it was developed in (JSON)',
    target: 'How it should taste: means and spreads (JSON list)',
    basis: 'What it was decided by: panel, sips or none',
    trial_id: 'Trial it comes from',
    level_id: 'Level it comes from',
    why: 'Why this one, in the owner’s words',
  },
  version_sources: { version_id: 'Version', jar_id: 'Jar it comes from', tasting_id: 'Tasting that decided it' },
  batches: {
    version_id: 'Version that was made',
    made_at: 'When (UTC)',
    volume_mL: 'How much (mL)',
    lot: 'Lot code',
  },
  erasures: {
    what: 'What was erased for good: a taster, or what lay in the bin',
    entries: 'Entries of the change log (JSON list)',
  },
};

/** What a column means, in one line; undefined when nobody has said. */
export function columnWords(table: TableName, column: string): string | undefined {
  return own[table]?.[column] ?? everyRow[column];
}

/** Columns without words, and words without a column: both must be none. */
export function columnWordFaults(): string[] {
  const missing = tableNames.flatMap((table) =>
    columnNames(table).flatMap((column) => (columnWords(table, column) === undefined ? [`${table}.${column}`] : [])),
  );
  const gone = Object.entries(own).flatMap(([table, words]) =>
    Object.keys(words ?? {}).flatMap((column) =>
      Object.hasOwn(tables[table as TableName].columns, column) ? [] : [`${table}.${column}`],
    ),
  );
  return [...missing, ...gone];
}
