import type { Migration } from './migration.ts';

const form = '????-??-??T??:??:??.???Z';

// New columns may all be null: the change log keeps rows from before them, and reads the missing column as null.
const sql = `
ALTER TABLE sightings ADD COLUMN corrected_at TEXT CHECK (corrected_at IS NULL OR corrected_at GLOB '${form}');
ALTER TABLE sightings ADD COLUMN correction TEXT
  CHECK (correction IS NULL OR (corrected_at IS NOT NULL AND length(correction) BETWEEN 1 AND 400));
ALTER TABLE samples ADD COLUMN taken_out_at TEXT CHECK (taken_out_at IS NULL OR taken_out_at GLOB '${form}');
ALTER TABLE samples ADD COLUMN taken_out_why TEXT
  CHECK ((taken_out_at IS NULL) = (taken_out_why IS NULL) AND (taken_out_why IS NULL OR length(taken_out_why) <= 400));
CREATE INDEX samples_taken_out ON samples (tasting_id) WHERE taken_out_at IS NOT NULL;
`;

/** Sightings that were a mistake stay readable; samples whose jar was discarded stay in their tasting, and don't count. */
export const takenOutMigration: Migration = {
  number: 90,
  title: 'mistaken sightings, samples taken out of a tasting',
  apply(db) {
    db.exec(sql);
  },
};
