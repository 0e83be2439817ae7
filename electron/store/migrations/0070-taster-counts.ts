import type { Migration } from './migration.ts';

const sql = `
CREATE TABLE taster_counts (
  taster_id TEXT PRIMARY KEY,
  tastings INTEGER NOT NULL DEFAULT 0 CHECK (tastings >= 0)
) STRICT, WITHOUT ROWID;
INSERT INTO taster_counts SELECT taster_id, count(DISTINCT tasting_id) FROM servings GROUP BY taster_id;
CREATE TRIGGER servings_tasters_in AFTER INSERT ON servings BEGIN
  INSERT OR IGNORE INTO taster_counts (taster_id) VALUES (NEW.taster_id);
  UPDATE taster_counts SET tastings = tastings + NOT EXISTS (
    SELECT 1 FROM servings WHERE taster_id = NEW.taster_id AND tasting_id = NEW.tasting_id AND id <> NEW.id
  ) WHERE taster_id = NEW.taster_id;
END;
CREATE TRIGGER servings_tasters_out AFTER DELETE ON servings BEGIN
  UPDATE taster_counts SET tastings = tastings - NOT EXISTS (
    SELECT 1 FROM servings WHERE taster_id = OLD.taster_id AND tasting_id = OLD.tasting_id
  ) WHERE taster_id = OLD.taster_id;
END;
`;

/** In how many tastings each taster was, kept as servings come and go: a list of tasters need not go through all servings ever. */
export const tasterCountsMigration: Migration = {
  number: 70,
  title: 'tastings counted by taster',
  apply(db) {
    db.exec(sql);
  },
};
