import type { FoodComposition } from './food-composition.ts';

export const vesselKinds = ['open-jar', 'lidded-jar', 'swing-top', 'crown', 'plastic'] as const;
export type VesselKind = (typeof vesselKinds)[number];

export interface JarVessel {
  readonly kind: VesselKind;
  readonly capacity_mL: number;
  /** Inner diameter, for the warming; without it a jar half again as tall as wide is assumed. */
  readonly diameter_mm?: number | undefined;
  /** The pressure above the air's that its maker says it is made for. */
  readonly ratedGauge_bar?: number | undefined;
}

/** An ingredient that the pantry does not bring: what it is made of, and what its owner said of it. */
export interface OwnJarIngredient extends FoodComposition {
  readonly name: string;
  readonly allergens?: readonly string[] | undefined;
  /** Its kind in the pantry's words, such as juice; where nobody says, a liquid may be a juice. */
  readonly kind?: string | undefined;
}

export interface JarAddition {
  /** A name of the pantry, or an ingredient of one's own with its grams per 100 g. */
  readonly ingredient: string | OwnJarIngredient;
  readonly mass_g: number;
  readonly state: 'fresh' | 'frozen' | 'liquid';
  /** Default: the room's for fresh and liquid, −18 °C for frozen. */
  readonly temperature_C?: number | undefined;
}

/** Everything a jar sheet is worked out from. */
export interface JarInput {
  readonly vessel: JarVessel;
  readonly base: {
    readonly volume_mL: number;
    readonly temperature_C: number;
    /** `null`: nobody knows, and the sheet says so. */
    readonly sugar_g_per_L: number | null;
    readonly alcohol_pctVol?: number | undefined;
  };
  readonly additions: readonly JarAddition[];
  readonly ambient_C: number;
  /** Sugar left, per litre of contents, when the vessel is closed. Absent: it is not closed. */
  readonly sealedWithSugar_g_per_L?: number | undefined;
}

/** How cold a freezer is when nobody says. Common practice, no source. */
export const freezer_C = -18;
