import type { Reader } from '../reader.ts';
import { type NamedScore, revealedScores } from './tastings.ts';

/** A taster left out of a trial's findings, with the owner's reason. */
export interface SetAside {
  readonly taster: string;
  readonly name: string;
  readonly reason: string;
}

export function setAsidesOf(read: Reader, trial: string): SetAside[] {
  return read.all(
    `SELECT s.taster_id AS taster, t.name, s.reason FROM set_asides AS s JOIN tasters AS t ON t.id = s.taster_id
     WHERE s.trial_id = ? ORDER BY t.name`,
    trial,
  );
}

/** The scores of a trial's closed tastings without those of tasters who were set aside. */
export function countedScores(read: Reader, trial: string): NamedScore[] {
  const aside = new Set(setAsidesOf(read, trial).map(({ name }) => name));
  return revealedScores(read, trial).filter(({ taster }) => !aside.has(taster));
}
