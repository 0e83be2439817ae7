import { kitchenMigration } from './0010-kitchen.ts';
import { pantryFiguresMigration } from './0020-pantry-figures.ts';
import { nothingLostMigration } from './0040-nothing-lost.ts';
import { bottlesAndDaysMigration } from './0050-bottles-and-days.ts';
import { photosMigration } from './0060-photos.ts';
import { tasterCountsMigration } from './0070-taster-counts.ts';
import { takenOutMigration } from './0090-taken-out.ts';
import type { Migration } from './migration.ts';

/** Every migration, oldest first. A released one is never edited: add the next. */
export const allMigrations: readonly Migration[] = [
  kitchenMigration,
  pantryFiguresMigration,
  nothingLostMigration,
  bottlesAndDaysMigration,
  photosMigration,
  tasterCountsMigration,
  takenOutMigration,
];

/** The newest schema that a release wrote: down from here nothing is edited, and a kitchen of each is kept in tests/fixtures. */
export const lastReleased = 90;
