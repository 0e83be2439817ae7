import type { FoodComposition } from '#core/ferment/food-composition.ts';

/** One addition of a formula, per litre of base, so that it scales by itself. */
export interface FormulaAddition {
  /** A name of the pantry, or the maker's own. */
  readonly ingredient: string;
  readonly amount_g_per_L: number;
  readonly state: 'fresh' | 'frozen' | 'liquid';
  /** How it is cut: crushed, whole, sliced … */
  readonly form?: string | undefined;
  /** For ingredients that the pantry does not have. */
  readonly composition?: FoodComposition | undefined;
}

/** How a drink is made: the base, what goes into each litre of it, for how long, how warm and under what cover. */
export interface Formula {
  readonly base: {
    readonly name: string;
    readonly sugar_g_per_L?: number | undefined;
    readonly alcohol_pctVol?: number | undefined;
  };
  readonly additions: readonly FormulaAddition[];
  readonly days: number;
  /** Absent where nobody said. */
  readonly temperature_C?: number | undefined;
  readonly cover?: string | undefined;
  readonly note?: string | undefined;
}
