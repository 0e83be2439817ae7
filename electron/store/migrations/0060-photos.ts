import type { Migration } from './migration.ts';

// The pictures themselves are files named by their hash, beside the kitchen: see photo-files.ts.
const sql = `
CREATE TABLE photos (
  id TEXT PRIMARY KEY CHECK (length(id) = 36),
  revision INTEGER NOT NULL CHECK (revision >= 1),
  is_sample INTEGER NOT NULL CHECK (is_sample IN (0, 1)),
  created_at TEXT NOT NULL CHECK (created_at GLOB '????-??-??T??:??:??.???Z'),
  jar_id TEXT REFERENCES jars (id),
  base_id TEXT REFERENCES bases (id),
  taken_at TEXT NOT NULL CHECK (taken_at GLOB '????-??-??T??:??:??.???Z'),
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
  format TEXT NOT NULL CHECK (format IN ('jpeg', 'png', 'webp')),
  width INTEGER NOT NULL CHECK (width BETWEEN 1 AND 65535),
  height INTEGER NOT NULL CHECK (height BETWEEN 1 AND 65535),
  bytes INTEGER NOT NULL CHECK (bytes BETWEEN 1 AND 8388608),
  note TEXT CHECK (note IS NULL OR length(note) <= 4000),
  CHECK ((jar_id IS NULL) <> (base_id IS NULL))
) STRICT;
CREATE INDEX photos_by_jar ON photos (jar_id, taken_at);
CREATE INDEX photos_by_base ON photos (base_id, taken_at);
CREATE INDEX photos_of_sample ON photos (id) WHERE is_sample = 1;

INSERT INTO row_counts VALUES ('photos', 0, 0);
CREATE TRIGGER photos_counted_in AFTER INSERT ON photos BEGIN
  UPDATE row_counts SET total = total + 1, of_sample = of_sample + NEW.is_sample WHERE table_name = 'photos';
END;
CREATE TRIGGER photos_counted_out AFTER DELETE ON photos BEGIN
  UPDATE row_counts SET total = total - 1, of_sample = of_sample - OLD.is_sample WHERE table_name = 'photos';
END;
`;

/** Photos of jars and bases: what each shows and when, and the hash that names its file. */
export const photosMigration: Migration = {
  number: 60,
  title: 'photos of jars and bases',
  apply(db) {
    db.exec(sql);
  },
};
