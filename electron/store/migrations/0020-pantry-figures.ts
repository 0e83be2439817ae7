import type { Migration } from './migration.ts';

// New columns may all be null: the change log keeps rows from before them, and reads the missing column as null.
const sql = `
ALTER TABLE kitchens ADD COLUMN currency TEXT CHECK (currency IS NULL OR length(currency) BETWEEN 1 AND 12);
ALTER TABLE ingredients ADD COLUMN source TEXT CHECK (source IS NULL OR length(source) BETWEEN 1 AND 400);
ALTER TABLE ingredients ADD COLUMN measures TEXT CHECK (measures IS NULL OR (json_valid(measures) AND json_type(measures) = 'array'));
ALTER TABLE stocks ADD COLUMN price_per_L REAL CHECK (price_per_L IS NULL OR (price_per_L >= 0 AND price_per_L <= 100000));
ALTER TABLE stocks ADD COLUMN short_g REAL CHECK (short_g IS NULL OR (short_g > 0 AND short_g <= 1000000000));
`;

/** Where an ingredient's figures come from, what its measures weigh, prices by volume, and what was used beyond what was noted. */
export const pantryFiguresMigration: Migration = {
  number: 20,
  title: 'figures and prices of the pantry',
  apply(db) {
    db.exec(sql);
  },
};
