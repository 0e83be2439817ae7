import type { Reason } from '#core/reason.ts';
import type { ColdStart } from './cold-start.ts';

/** The figures of a jar: what it will hold and may become. `null` is what cannot be known; `reasons` says why. */
export interface JarFigures {
  readonly volume_mL: number;
  readonly fillFraction: number;
  /** Capacity less contents; below zero when the jar is overfull. */
  readonly headspace_mL: number;
  readonly sugar: {
    readonly added_g: number | null;
    readonly total_g_per_L: number | null;
    readonly brix: number | null;
    readonly sg: number | null;
  };
  readonly alcohol: {
    readonly ifAllSugar_pctVol: number | null;
    readonly ifYeastYield_pctVol: number | null;
    readonly sugarLeftToHalfPercent_g_per_L: number;
  };
  readonly carbonation: {
    readonly volumes: number;
    readonly gauge_bar: { readonly ambient: number; readonly at35: number };
  } | null;
  readonly thaw: ColdStart | null;
  readonly reasons: readonly Reason[];
}
