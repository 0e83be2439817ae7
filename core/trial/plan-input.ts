import type { Factor } from './factor.ts';
import type { Addition, AdditionState, Cover, Vessel } from './formula.ts';

export const calendars = ['staggered-start', 'staggered-pull'] as const;
export type Calendar = (typeof calendars)[number];

/** One level of the factor. Which members matter depends on the factor; the others must stay away. */
export interface LevelInput {
  readonly name: string;
  readonly value?: number | undefined;
  readonly additions?: readonly Addition[] | undefined;
  readonly state?: AdditionState | undefined;
  readonly days?: number | undefined;
  readonly cover?: Cover | undefined;
  readonly temperature_C?: number | undefined;
}

/** What every jar shares. The factor's own member may be left out. */
export interface HeldInput {
  readonly additions: readonly Addition[];
  readonly days?: number | undefined;
  readonly cover?: Cover | undefined;
  readonly temperature_C?: number | undefined;
  /** Anything else kept equal, in the maker's own words. */
  readonly also: Readonly<Record<string, string | number | boolean>>;
}

export interface PlanInput {
  readonly question: string;
  readonly factor: Factor;
  readonly levels: readonly LevelInput[];
  readonly control: string;
  readonly held: HeldInput;
  readonly replicates: number;
  readonly calendar: Calendar;
  readonly baseAvailable_mL: number;
  readonly baseEach_mL: number;
  readonly vessel: Vessel;
  readonly start: string;
  readonly seed: number;
}

export type PlanProblemCode =
  | 'one-level'
  | 'level-name-twice'
  | 'levels-alike'
  | 'level-value-missing'
  | 'held-missing'
  | 'two-factors-moved'
  | 'no-control'
  | 'pull-before-start'
  | 'too-long'
  | 'too-warm-or-cold'
  | 'not-enough-base'
  | 'jar-overfull'
  | 'too-many-jars';

/** Why a plan can't work, at which field, and the way out. */
export interface PlanProblem {
  readonly code: PlanProblemCode;
  readonly message: string;
  readonly path: readonly (string | number)[];
}

export type PlanNoteCode =
  | 'base-age-moves'
  | 'cold-storage-moves'
  | 'control-is-today'
  | 'which-not-why'
  | 'one-jar-a-level'
  | 'juice-beside-fruit'
  | 'fill-order'
  | 'volume-uncertain'
  | 'little-headspace';

/** What the maker should know about a plan that works. */
export interface PlanNote {
  readonly code: PlanNoteCode;
  readonly message: string;
}
