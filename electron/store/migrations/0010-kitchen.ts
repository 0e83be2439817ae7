import type { Migration } from './migration.ts';

// Every table of a person's data begins with the same four columns; ids are UUIDv7, moments are UTC with milliseconds.
const everyRow = `
  id TEXT PRIMARY KEY CHECK (length(id) = 36),
  revision INTEGER NOT NULL CHECK (revision >= 1),
  is_sample INTEGER NOT NULL CHECK (is_sample IN (0, 1)),
  created_at TEXT NOT NULL CHECK (created_at GLOB '????-??-??T??:??:??.???Z')`;

const moment = (column: string) =>
  `${column} TEXT CHECK (${column} IS NULL OR ${column} GLOB '????-??-??T??:??:??.???Z')`;
const momentNeeded = (column: string) => `${column} TEXT NOT NULL CHECK (${column} GLOB '????-??-??T??:??:??.???Z')`;
const flag = (column: string) => `${column} INTEGER NOT NULL CHECK (${column} IN (0, 1))`;
const between = (column: string, low: number, high: number) =>
  `${column} REAL CHECK (${column} IS NULL OR (${column} >= ${low} AND ${column} <= ${high}))`;
const betweenNeeded = (column: string, low: number, high: number) =>
  `${column} REAL NOT NULL CHECK (${column} >= ${low} AND ${column} <= ${high})`;
const words = (column: string, most: number) =>
  `${column} TEXT CHECK (${column} IS NULL OR length(${column}) <= ${most})`;
const wordsNeeded = (column: string, most: number) =>
  `${column} TEXT NOT NULL CHECK (length(${column}) BETWEEN 1 AND ${most})`;
const list = (column: string) =>
  `${column} TEXT NOT NULL CHECK (json_valid(${column}) AND json_type(${column}) = 'array')`;
const record = (column: string) =>
  `${column} TEXT NOT NULL CHECK (json_valid(${column}) AND json_type(${column}) = 'object')`;
const refers = (column: string, table: string) => `${column} TEXT NOT NULL REFERENCES ${table} (id)`;
const mayRefer = (column: string, table: string) => `${column} TEXT REFERENCES ${table} (id)`;

const sql = `
CREATE TABLE kitchens (${everyRow},
  ${wordsNeeded('name', 200)},
  measures TEXT NOT NULL CHECK (measures IN ('metric', 'us'))
) STRICT;

CREATE TABLE tasters (${everyRow},
  name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 200),
  ${list('avoids')},
  ${flag('avoids_alcohol')},
  ${words('note', 4000)}
) STRICT;

CREATE TABLE ingredients (${everyRow},
  name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 200),
  kind TEXT NOT NULL CHECK (kind IN ('fruit', 'vegetable', 'juice', 'herb', 'root', 'spice', 'sweetener', 'tea', 'grain', 'other')),
  ${between('water_g', 0, 100)},
  ${between('sugars_g', 0, 100)},
  ${between('sucrose_g', 0, 100)},
  ${between('glucose_g', 0, 100)},
  ${between('fructose_g', 0, 100)},
  ${between('fibre_g', 0, 100)},
  ${between('protein_g', 0, 100)},
  ${between('fat_g', 0, 100)},
  ${between('ash_g', 0, 100)},
  ${list('allergens')},
  ${words('note', 4000)}
) STRICT;

CREATE TABLE stocks (${everyRow},
  name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 200),
  ${between('on_hand_g', 0, 1_000_000)},
  ${between('price_per_kg', 0, 100_000)}
) STRICT;

CREATE TABLE cultures (${everyRow},
  name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 200),
  ${wordsNeeded('kind', 200)},
  ${between('weight_g', 0, 1_000_000)},
  ${moment('refreshed_at')},
  ${words('rests', 200)},
  ${words('note', 4000)}
) STRICT;

CREATE TABLE bases (${everyRow},
  ${mayRefer('culture_id', 'cultures')},
  ${wordsNeeded('name', 200)},
  ${momentNeeded('made_at')},
  ${moment('strained_at')},
  ${betweenNeeded('volume_mL', 0.001, 1_000_000)},
  ${between('temperature_C', -40, 110)},
  ${between('sugar_start_g_per_L', 0, 1000)},
  ${between('sugar_now_g_per_L', 0, 1000)},
  ${between('alcohol_pctVol', 0, 20)},
  ${words('note', 4000)},
  CHECK (strained_at IS NULL OR strained_at >= made_at)
) STRICT;
CREATE INDEX bases_by_culture ON bases (culture_id);

CREATE TABLE trials (${everyRow},
  ${wordsNeeded('question', 400)},
  factor TEXT NOT NULL CHECK (factor IN ('fruit', 'amount', 'days', 'state', 'cover', 'temperature', 'formula')),
  calendar TEXT NOT NULL CHECK (calendar IN ('staggered-start', 'staggered-pull')),
  ${mayRefer('base_id', 'bases')},
  ${betweenNeeded('base_each_mL', 0.001, 1_000_000)},
  replicates INTEGER NOT NULL CHECK (replicates BETWEEN 1 AND 12),
  vessel_kind TEXT NOT NULL CHECK (vessel_kind IN ('open-jar', 'lidded-jar', 'swing-top', 'crown', 'plastic')),
  ${betweenNeeded('vessel_capacity_mL', 0.001, 1_000_000)},
  ${between('vessel_diameter_mm', 1, 5000)},
  ${between('vessel_rated_gauge_bar', 0, 100)},
  ${momentNeeded('starts_at')},
  ${record('held')},
  seed INTEGER NOT NULL CHECK (seed BETWEEN 0 AND 4294967295),
  ${moment('closed_at')},
  ${words('note', 4000)}
) STRICT;
CREATE INDEX trials_by_base ON trials (base_id);
CREATE INDEX trials_by_start ON trials (starts_at);

CREATE TABLE levels (${everyRow},
  ${refers('trial_id', 'trials')},
  position INTEGER NOT NULL CHECK (position >= 1),
  ${wordsNeeded('name', 200)},
  ${between('value', -1_000_000, 1_000_000)},
  ${flag('is_control')},
  ${record('formula')},
  UNIQUE (trial_id, position),
  UNIQUE (trial_id, name)
) STRICT;

CREATE TABLE jars (${everyRow},
  ${refers('trial_id', 'trials')},
  ${refers('level_id', 'levels')},
  ${wordsNeeded('label', 20)},
  replicate INTEGER NOT NULL CHECK (replicate >= 1),
  ${betweenNeeded('base_mL', 0.001, 1_000_000)},
  ${momentNeeded('planned_start')},
  ${momentNeeded('planned_pull')},
  ${moment('started_at')},
  ${moment('pulled_at')},
  ${moment('strained_at')},
  ${moment('discarded_at')},
  ${words('discard_reason', 400)},
  UNIQUE (trial_id, label),
  UNIQUE (level_id, replicate),
  CHECK (planned_pull > planned_start),
  CHECK (pulled_at IS NULL OR (started_at IS NOT NULL AND pulled_at >= started_at)),
  CHECK (strained_at IS NULL OR (started_at IS NOT NULL AND strained_at >= started_at)),
  CHECK ((discarded_at IS NULL) = (discard_reason IS NULL))
) STRICT;
CREATE INDEX jars_by_level ON jars (level_id);
CREATE INDEX jars_by_pull ON jars (planned_pull);

CREATE TABLE readings (${everyRow},
  ${mayRefer('jar_id', 'jars')},
  ${mayRefer('base_id', 'bases')},
  ${momentNeeded('taken_at')},
  ${between('brix', 0, 80)},
  ${between('sg', 0.9, 1.4)},
  ${between('ph', 0, 14)},
  ${between('acidity_g_per_L', 0, 200)},
  acidity_as TEXT CHECK (acidity_as IN ('lactic', 'acetic', 'citric', 'malic', 'tartaric')),
  ${between('temperature_C', -40, 110)},
  ${words('note', 4000)},
  CHECK ((jar_id IS NULL) <> (base_id IS NULL)),
  CHECK ((acidity_g_per_L IS NULL) = (acidity_as IS NULL)),
  CHECK (coalesce(brix, sg, ph, acidity_g_per_L, temperature_C) IS NOT NULL)
) STRICT;
CREATE INDEX readings_by_jar ON readings (jar_id, taken_at);
CREATE INDEX readings_by_base ON readings (base_id, taken_at);

CREATE TABLE sightings (${everyRow},
  ${mayRefer('jar_id', 'jars')},
  ${mayRefer('base_id', 'bases')},
  ${momentNeeded('seen_at')},
  ${wordsNeeded('what', 40)},
  ${words('note', 4000)},
  CHECK ((jar_id IS NULL) <> (base_id IS NULL))
) STRICT;
CREATE INDEX sightings_by_jar ON sightings (jar_id, seen_at);
CREATE INDEX sightings_by_base ON sightings (base_id, seen_at);

CREATE TABLE sips (${everyRow},
  ${refers('jar_id', 'jars')},
  ${momentNeeded('taken_at')},
  ${between('tang', 0, 10)},
  ${between('fizz', 0, 10)},
  ${between('sweetness', 0, 10)},
  ${between('liking', 1, 9)},
  ${words('note', 4000)},
  CHECK (coalesce(tang, fizz, sweetness, liking) IS NOT NULL)
) STRICT;
CREATE INDEX sips_by_jar ON sips (jar_id, taken_at);

CREATE TABLE tastings (${everyRow},
  ${mayRefer('trial_id', 'trials')},
  ${wordsNeeded('name', 200)},
  ${momentNeeded('held_at')},
  ${between('served_C', -5, 40)},
  replicates INTEGER NOT NULL CHECK (replicates BETWEEN 1 AND 10),
  seed INTEGER NOT NULL CHECK (seed BETWEEN 0 AND 4294967295),
  ${moment('closed_at')},
  ${words('note', 4000)}
) STRICT;
CREATE INDEX tastings_by_trial ON tastings (trial_id);

CREATE TABLE attributes (${everyRow},
  ${refers('tasting_id', 'tastings')},
  position INTEGER NOT NULL CHECK (position >= 1),
  ${wordsNeeded('name', 100)},
  kind TEXT NOT NULL CHECK (kind IN ('scale', 'just-about-right', 'place')),
  ${betweenNeeded('low', -1000, 1000)},
  ${betweenNeeded('high', -1000, 1000)},
  ${words('low_word', 100)},
  ${words('high_word', 100)},
  UNIQUE (tasting_id, position),
  UNIQUE (tasting_id, name),
  CHECK (low < high)
) STRICT;

CREATE TABLE samples (${everyRow},
  ${refers('tasting_id', 'tastings')},
  ${refers('jar_id', 'jars')},
  blind_code TEXT NOT NULL CHECK (blind_code GLOB '[0-9][0-9][0-9]'),
  ${between('served_mL', 0, 10_000)},
  UNIQUE (tasting_id, blind_code),
  UNIQUE (tasting_id, jar_id)
) STRICT;
CREATE INDEX samples_by_jar ON samples (jar_id);
CREATE INDEX samples_by_code ON samples (blind_code);

CREATE TABLE servings (${everyRow},
  ${refers('tasting_id', 'tastings')},
  ${refers('taster_id', 'tasters')},
  ${refers('sample_id', 'samples')},
  sitting INTEGER NOT NULL CHECK (sitting >= 1),
  place INTEGER NOT NULL CHECK (place >= 1),
  UNIQUE (tasting_id, taster_id, sitting, place)
) STRICT;
CREATE INDEX servings_by_taster ON servings (taster_id);
CREATE INDEX servings_by_sample ON servings (sample_id);

CREATE TABLE scores (${everyRow},
  ${refers('tasting_id', 'tastings')},
  ${refers('taster_id', 'tasters')},
  ${refers('sample_id', 'samples')},
  ${refers('attribute_id', 'attributes')},
  replicate INTEGER NOT NULL CHECK (replicate BETWEEN 1 AND 1000),
  ${betweenNeeded('score', -1000, 1000)},
  UNIQUE (sample_id, taster_id, attribute_id, replicate)
) STRICT;
CREATE INDEX scores_by_tasting ON scores (tasting_id);
CREATE INDEX scores_by_taster ON scores (taster_id);
CREATE INDEX scores_by_attribute ON scores (attribute_id);

CREATE TABLE remarks (${everyRow},
  ${refers('tasting_id', 'tastings')},
  ${refers('taster_id', 'tasters')},
  ${refers('sample_id', 'samples')},
  ${wordsNeeded('words', 4000)},
  UNIQUE (sample_id, taster_id)
) STRICT;
CREATE INDEX remarks_by_tasting ON remarks (tasting_id);
CREATE INDEX remarks_by_taster ON remarks (taster_id);

CREATE TABLE wishes (${everyRow},
  ${refers('trial_id', 'trials')},
  ${wordsNeeded('attribute', 100)},
  goal TEXT NOT NULL CHECK (goal IN ('more', 'less', 'target')),
  ${betweenNeeded('low', -1000, 1000)},
  ${betweenNeeded('high', -1000, 1000)},
  ${between('target', -1000, 1000)},
  ${betweenNeeded('importance', 0.01, 100)},
  UNIQUE (trial_id, attribute),
  CHECK (low < high),
  CHECK ((goal = 'target') = (target IS NOT NULL)),
  CHECK (target IS NULL OR (target > low AND target < high))
) STRICT;

CREATE TABLE set_asides (${everyRow},
  ${refers('trial_id', 'trials')},
  ${refers('taster_id', 'tasters')},
  ${wordsNeeded('reason', 400)},
  UNIQUE (trial_id, taster_id)
) STRICT;
CREATE INDEX set_asides_by_taster ON set_asides (taster_id);

CREATE TABLE discriminations (${everyRow},
  ${mayRefer('trial_id', 'trials')},
  ${wordsNeeded('name', 200)},
  method TEXT NOT NULL CHECK (method IN ('triangle', 'duo-trio', 'paired', 'paired-two-sided')),
  ${words('asked', 200)},
  expected TEXT CHECK (expected IN ('A', 'B')),
  ${refers('jar_a_id', 'jars')},
  ${refers('jar_b_id', 'jars')},
  ${momentNeeded('held_at')},
  seed INTEGER NOT NULL CHECK (seed BETWEEN 0 AND 4294967295),
  ${moment('closed_at')},
  CHECK (jar_a_id <> jar_b_id),
  CHECK ((method = 'paired') = (expected IS NOT NULL))
) STRICT;
CREATE INDEX discriminations_by_trial ON discriminations (trial_id);
CREATE INDEX discriminations_by_a ON discriminations (jar_a_id);
CREATE INDEX discriminations_by_b ON discriminations (jar_b_id);

CREATE TABLE presentations (${everyRow},
  ${refers('discrimination_id', 'discriminations')},
  ${refers('taster_id', 'tasters')},
  round INTEGER NOT NULL CHECK (round >= 1),
  cups TEXT NOT NULL CHECK (cups GLOB '[AB][AB]' OR cups GLOB '[AB][AB][AB]' OR cups GLOB '[AB]:[AB][AB]'),
  ${list('codes')},
  chosen INTEGER CHECK (chosen BETWEEN 1 AND 3),
  UNIQUE (discrimination_id, taster_id, round)
) STRICT;
CREATE INDEX presentations_by_taster ON presentations (taster_id);

CREATE TABLE house_recipes (${everyRow},
  name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 200),
  ${words('note', 4000)}
) STRICT;

CREATE TABLE recipe_versions (${everyRow},
  ${refers('recipe_id', 'house_recipes')},
  number INTEGER NOT NULL CHECK (number >= 1),
  ${record('formula')},
  ${betweenNeeded('base_mL', 0.001, 1_000_000)},
  ${betweenNeeded('volume_mL', 0.001, 1_000_000)},
  ${record('vessel')},
  ${list('target')},
  basis TEXT NOT NULL CHECK (basis IN ('panel', 'sips', 'none')),
  ${mayRefer('trial_id', 'trials')},
  ${mayRefer('level_id', 'levels')},
  ${words('why', 4000)},
  UNIQUE (recipe_id, number)
) STRICT;
CREATE INDEX recipe_versions_by_trial ON recipe_versions (trial_id);
CREATE INDEX recipe_versions_by_level ON recipe_versions (level_id);

CREATE TABLE version_sources (${everyRow},
  ${refers('version_id', 'recipe_versions')},
  ${refers('jar_id', 'jars')},
  ${mayRefer('tasting_id', 'tastings')},
  UNIQUE (version_id, jar_id, tasting_id)
) STRICT;
CREATE INDEX version_sources_by_jar ON version_sources (jar_id);
CREATE INDEX version_sources_by_tasting ON version_sources (tasting_id);

CREATE TABLE batches (${everyRow},
  ${refers('version_id', 'recipe_versions')},
  ${momentNeeded('made_at')},
  ${betweenNeeded('volume_mL', 0.001, 1_000_000)},
  ${words('lot', 60)},
  ${words('note', 4000)}
) STRICT;
CREATE INDEX batches_by_version ON batches (version_id);

CREATE TABLE drafts (
  name TEXT PRIMARY KEY CHECK (length(name) BETWEEN 1 AND 200),
  body TEXT NOT NULL CHECK (json_valid(body) AND length(body) <= 200000),
  kept_at TEXT NOT NULL
) STRICT;

CREATE TABLE steps (
  id INTEGER PRIMARY KEY,
  at TEXT NOT NULL,
  request TEXT NOT NULL,
  summary TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('do', 'undo', 'redo')),
  target INTEGER REFERENCES steps (id),
  fixed_because TEXT,
  CHECK ((kind = 'do') = (target IS NULL))
) STRICT;
CREATE INDEX steps_by_target ON steps (target);

CREATE TABLE changes (
  id INTEGER PRIMARY KEY,
  step_id INTEGER NOT NULL REFERENCES steps (id),
  table_name TEXT NOT NULL,
  row_id TEXT NOT NULL,
  before TEXT CHECK (before IS NULL OR json_valid(before)),
  after TEXT CHECK (after IS NULL OR json_valid(after)),
  previous_hash TEXT NOT NULL CHECK (length(previous_hash) = 64),
  hash TEXT NOT NULL CHECK (length(hash) = 64),
  CHECK (before IS NOT NULL OR after IS NOT NULL)
) STRICT;
CREATE INDEX changes_by_step ON changes (step_id);
CREATE INDEX changes_by_row ON changes (table_name, row_id, id);
`;

/** The first kitchen: everything from tasters to house recipes, and the change log. */
export const kitchenMigration: Migration = {
  number: 10,
  title: 'the first kitchen',
  apply(db) {
    db.exec(sql);
  },
};
