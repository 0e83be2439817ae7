import type { Migration } from './migration.ts';

const everyRow = `
  id TEXT PRIMARY KEY CHECK (length(id) = 36),
  revision INTEGER NOT NULL CHECK (revision >= 1),
  is_sample INTEGER NOT NULL CHECK (is_sample IN (0, 1)),
  created_at TEXT NOT NULL CHECK (created_at GLOB '????-??-??T??:??:??.???Z')`;
const form = '????-??-??T??:??:??.???Z';

// New columns may all be null: the change log keeps rows from before them, and reads the missing column as null.
const sql = `
ALTER TABLE bases ADD COLUMN planned_hours REAL CHECK (planned_hours IS NULL OR (planned_hours > 0 AND planned_hours <= 8784));
ALTER TABLE bases ADD COLUMN went_in TEXT CHECK (went_in IS NULL OR length(went_in) <= 4000);
ALTER TABLE cultures ADD COLUMN refresh_days REAL CHECK (refresh_days IS NULL OR (refresh_days > 0 AND refresh_days <= 366));
ALTER TABLE cultures ADD COLUMN parent_id TEXT REFERENCES cultures (id);
CREATE INDEX cultures_by_parent ON cultures (parent_id);

CREATE TABLE culture_log (${everyRow},
  culture_id TEXT NOT NULL REFERENCES cultures (id),
  done_at TEXT NOT NULL CHECK (done_at GLOB '${form}'),
  what TEXT NOT NULL CHECK (what IN ('weighed', 'refreshed', 'split', 'revival-feed', 'revived')),
  weight_g REAL CHECK (weight_g IS NULL OR (weight_g >= 0 AND weight_g <= 1000000)),
  note TEXT CHECK (note IS NULL OR length(note) <= 4000)
) STRICT;
CREATE INDEX culture_log_by_culture ON culture_log (culture_id, done_at);

CREATE TABLE snoozes (${everyRow},
  jar_id TEXT REFERENCES jars (id),
  base_id TEXT REFERENCES bases (id),
  culture_id TEXT REFERENCES cultures (id),
  tasting_id TEXT REFERENCES tastings (id),
  need TEXT NOT NULL CHECK (need IN ('start', 'look', 'stir', 'pull', 'taste', 'strain', 'feed')),
  until_at TEXT NOT NULL CHECK (until_at GLOB '${form}'),
  reason TEXT CHECK (reason IS NULL OR length(reason) BETWEEN 1 AND 400),
  CHECK ((jar_id IS NOT NULL) + (base_id IS NOT NULL) + (culture_id IS NOT NULL) + (tasting_id IS NOT NULL) = 1)
) STRICT;
CREATE INDEX snoozes_by_jar ON snoozes (jar_id);
CREATE INDEX snoozes_by_base ON snoozes (base_id);
CREATE INDEX snoozes_by_culture ON snoozes (culture_id);
CREATE INDEX snoozes_by_tasting ON snoozes (tasting_id);

CREATE TABLE bottlings (${everyRow},
  jar_id TEXT REFERENCES jars (id),
  batch_id TEXT REFERENCES batches (id),
  bottled_at TEXT NOT NULL CHECK (bottled_at GLOB '${form}'),
  count INTEGER NOT NULL CHECK (count BETWEEN 1 AND 10000),
  size_mL REAL NOT NULL CHECK (size_mL >= 1 AND size_mL <= 1000000),
  closure TEXT NOT NULL CHECK (closure IN ('lidded-jar', 'swing-top', 'crown', 'plastic')),
  rated_gauge_bar REAL CHECK (rated_gauge_bar IS NULL OR (rated_gauge_bar > 0 AND rated_gauge_bar <= 100)),
  lot TEXT CHECK (lot IS NULL OR length(lot) BETWEEN 1 AND 60),
  sugar_g_per_L REAL CHECK (sugar_g_per_L IS NULL OR (sugar_g_per_L >= 0 AND sugar_g_per_L <= 1000)),
  chilled_at TEXT CHECK (chilled_at IS NULL OR chilled_at GLOB '${form}'),
  note TEXT CHECK (note IS NULL OR length(note) <= 4000),
  CHECK ((jar_id IS NULL) <> (batch_id IS NULL)),
  CHECK (chilled_at IS NULL OR chilled_at >= bottled_at)
) STRICT;
CREATE INDEX bottlings_by_jar ON bottlings (jar_id);
CREATE INDEX bottlings_by_batch ON bottlings (batch_id);

CREATE TABLE bottle_openings (${everyRow},
  bottling_id TEXT NOT NULL REFERENCES bottlings (id),
  opened_at TEXT NOT NULL CHECK (opened_at GLOB '${form}'),
  pour TEXT NOT NULL CHECK (pour IN ('flat', 'gentle', 'lively', 'gushed')),
  note TEXT CHECK (note IS NULL OR length(note) <= 4000)
) STRICT;
CREATE INDEX bottle_openings_by_bottling ON bottle_openings (bottling_id, opened_at);

CREATE INDEX snoozes_by_end ON snoozes (until_at);
CREATE INDEX jars_open ON jars (id) WHERE pulled_at IS NULL AND strained_at IS NULL AND discarded_at IS NULL;
CREATE INDEX jars_by_pulled ON jars (pulled_at);
CREATE INDEX jars_by_strained ON jars (strained_at);
CREATE INDEX bases_open ON bases (made_at) WHERE strained_at IS NULL;
`;

const added = ['culture_log', 'snoozes', 'bottlings', 'bottle_openings'] as const;

/** Counts the rows of a new table as they come and go, as migration 40 does; written out again, for a migration stands alone. */
function countedTable(table: (typeof added)[number]): string {
  return `
INSERT INTO row_counts VALUES ('${table}', 0, 0);
CREATE INDEX ${table}_of_sample ON ${table} (id) WHERE is_sample = 1;
CREATE TRIGGER ${table}_counted_in AFTER INSERT ON ${table} BEGIN
  UPDATE row_counts SET total = total + 1, of_sample = of_sample + NEW.is_sample WHERE table_name = '${table}';
END;
CREATE TRIGGER ${table}_counted_out AFTER DELETE ON ${table} BEGIN
  UPDATE row_counts SET total = total - 1, of_sample = of_sample - OLD.is_sample WHERE table_name = '${table}';
END;`;
}

/** How long a base is planned for and what went into it, a culture's seasons, what is put off, and bottles. */
export const bottlesAndDaysMigration: Migration = {
  number: 50,
  title: 'bottles, seasons of a culture, what is put off',
  apply(db) {
    db.exec(sql);
    for (const table of added) db.exec(countedTable(table));
  },
};
