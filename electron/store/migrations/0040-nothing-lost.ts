import { rechain } from '../log/rechain.ts';
import type { Sqlite } from '../sqlite-driver.ts';
import type { Migration } from './migration.ts';

/** The tables of people's rows that there are at this point: those with the four common columns. */
function rowTables(db: Sqlite): string[] {
  return db
    .prepare(
      `SELECT m.name FROM sqlite_schema AS m JOIN pragma_table_info(m.name) AS c ON c.name = 'is_sample'
       WHERE m.type = 'table' ORDER BY m.name`,
    )
    .pluck()
    .all() as string[];
}

const log = `
ALTER TABLE changes ADD COLUMN salt TEXT;
ALTER TABLE changes ADD COLUMN commitment TEXT;

CREATE TABLE erasures (
  id TEXT PRIMARY KEY CHECK (length(id) = 36),
  revision INTEGER NOT NULL CHECK (revision >= 1),
  is_sample INTEGER NOT NULL CHECK (is_sample IN (0, 1)),
  created_at TEXT NOT NULL CHECK (created_at GLOB '????-??-??T??:??:??.???Z'),
  what TEXT NOT NULL CHECK (what IN ('taster', 'bin')),
  entries TEXT NOT NULL CHECK (json_valid(entries) AND json_type(entries) = 'array')
) STRICT;

CREATE TABLE seals (
  id INTEGER PRIMARY KEY,
  last_entry INTEGER NOT NULL,
  last_hash TEXT NOT NULL CHECK (length(last_hash) = 64),
  broken_at INTEGER
) STRICT;

CREATE TABLE row_counts (
  table_name TEXT PRIMARY KEY,
  total INTEGER NOT NULL CHECK (total >= 0),
  of_sample INTEGER NOT NULL CHECK (of_sample >= 0)
) STRICT, WITHOUT ROWID;

CREATE TABLE tasting_counts (
  tasting_id TEXT PRIMARY KEY,
  tasters INTEGER NOT NULL DEFAULT 0 CHECK (tasters >= 0),
  servings INTEGER NOT NULL DEFAULT 0 CHECK (servings >= 0),
  scores INTEGER NOT NULL DEFAULT 0 CHECK (scores >= 0)
) STRICT, WITHOUT ROWID;

DROP INDEX servings_by_taster;
CREATE INDEX servings_by_taster ON servings (taster_id, tasting_id);
INSERT INTO tasting_counts
  SELECT id, (SELECT count(DISTINCT taster_id) FROM servings WHERE tasting_id = t.id),
    (SELECT count(*) FROM servings WHERE tasting_id = t.id), (SELECT count(*) FROM scores WHERE tasting_id = t.id)
  FROM tastings AS t;
CREATE TRIGGER tastings_begin_counts AFTER INSERT ON tastings BEGIN
  INSERT OR IGNORE INTO tasting_counts (tasting_id) VALUES (NEW.id);
END;
CREATE TRIGGER scores_count_in AFTER INSERT ON scores BEGIN
  INSERT OR IGNORE INTO tasting_counts (tasting_id) VALUES (NEW.tasting_id);
  UPDATE tasting_counts SET scores = scores + 1 WHERE tasting_id = NEW.tasting_id;
END;
CREATE TRIGGER scores_count_out AFTER DELETE ON scores BEGIN
  UPDATE tasting_counts SET scores = scores - 1 WHERE tasting_id = OLD.tasting_id;
END;
CREATE TRIGGER servings_count_in AFTER INSERT ON servings BEGIN
  INSERT OR IGNORE INTO tasting_counts (tasting_id) VALUES (NEW.tasting_id);
  UPDATE tasting_counts SET servings = servings + 1, tasters = tasters + NOT EXISTS (
    SELECT 1 FROM servings WHERE taster_id = NEW.taster_id AND tasting_id = NEW.tasting_id AND id <> NEW.id
  ) WHERE tasting_id = NEW.tasting_id;
END;
CREATE TRIGGER servings_count_out AFTER DELETE ON servings BEGIN
  UPDATE tasting_counts SET servings = servings - 1, tasters = tasters - NOT EXISTS (
    SELECT 1 FROM servings WHERE taster_id = OLD.taster_id AND tasting_id = OLD.tasting_id
  ) WHERE tasting_id = OLD.tasting_id;
END;

CREATE INDEX steps_by_kind ON steps (kind, id);
CREATE INDEX changes_removed ON changes (step_id, table_name, row_id, id) WHERE after IS NULL;
CREATE INDEX changes_erased ON changes (id) WHERE commitment IS NOT NULL;
CREATE INDEX tastings_by_time ON tastings (held_at, id);
CREATE INDEX tastings_open ON tastings (id) WHERE closed_at IS NULL;
CREATE INDEX discriminations_by_time ON discriminations (held_at, id);
CREATE INDEX discriminations_open ON discriminations (id) WHERE closed_at IS NULL;
CREATE INDEX bases_by_time ON bases (made_at);
CREATE INDEX trials_in_order ON trials (starts_at, id);
DROP INDEX trials_by_start;
CREATE INDEX samples_by_code_and_time ON samples (blind_code, created_at);
DROP INDEX samples_by_code;
`;

/** Keeps the number of a table's rows as they come and go, so that no screen has to count millions. */
function countedTable(table: string): string {
  const change = (name: string, when: string, row: 'NEW' | 'OLD', sign: '+' | '-') => `
CREATE TRIGGER ${table}_${name} AFTER ${when} ON ${table} BEGIN
  UPDATE row_counts SET total = total ${sign} 1, of_sample = of_sample ${sign} ${row}.is_sample WHERE table_name = '${table}';
END;`;
  return `
INSERT INTO row_counts SELECT '${table}', count(*), coalesce(sum(is_sample), 0) FROM ${table};
CREATE INDEX ${table}_of_sample ON ${table} (id) WHERE is_sample = 1;
${change('counted_in', 'INSERT', 'NEW', '+')}
${change('counted_out', 'DELETE', 'OLD', '-')}`;
}

/** A log that can forget for good and still hold, a record of what it forgot, counts, and what long lists need to stay quick. */
export const nothingLostMigration: Migration = {
  number: 40,
  title: 'a log that can forget and still hold, and lists that stay quick',
  apply(db) {
    db.exec(log);
    for (const table of rowTables(db)) db.exec(countedTable(table));
    rechain(db);
  },
};
