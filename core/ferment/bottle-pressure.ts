import { celsius, gramsPerLitre, millilitres } from '#core/units/branded.ts';
import { phrase } from '#core/words/phrase.ts';
import { closedPressure } from './carbon-dioxide.ts';
import { type Caution, caution, commonPractice } from './caution.ts';
import type { VesselKind } from './jar-input.ts';
import { pressureCautions } from './pressure-cautions.ts';

/** How full a bottle is when nobody says: a finger or two below the rim. Common practice, no source. */
const usualFill = 0.96;
/** When nobody says how warm the room is. Common practice, no source. */
const usualRoom_C = 22;
/** A warm day, the temperature that closed glass has to stand. */
const warmDay_C = 35;

export interface BottleInput {
  readonly closure: Exclude<VesselKind, 'open-jar'>;
  /** More than 0. */
  readonly size_mL: number;
  /** The pressure above the air's that its maker says it is made for. */
  readonly ratedGauge_bar?: number | undefined;
  /** Sugar left at closing; absent: not known. */
  readonly sugar_g_per_L?: number | undefined;
}

/**
 * The most pressure that the sugar left can make in a bottle, and the cautions of the bottle.
 *
 * Method: `closedPressure` with the bottle filled to 96 %, closed at 22 °C, at 22 and 35 °C; `pressureCautions`. Where the sugar at closing
 * is not known there is no bound, and a caution says so.
 *
 * @returns bar above the air's, `null` without the sugar; the cautions, the gravest first
 * @throws OutOfDomain when size or sugar are outside the ranges of `closedPressure`
 * Accuracy: 3 % of the absolute pressure, as an upper bound.
 * Source: Weiss (1974); fill and room are common practice, no source.
 * @example bottlePressure({ closure: 'swing-top', size_mL: 500, sugar_g_per_L: 8 }).gauge_bar
 */
export function bottlePressure({ closure, size_mL, ratedGauge_bar, sugar_g_per_L }: BottleInput): {
  readonly gauge_bar: { readonly ambient: number; readonly at35: number } | null;
  readonly cautions: Caution[];
} {
  const vessel = { kind: closure, capacity_mL: size_mL, ratedGauge_bar };
  if (sugar_g_per_L === undefined) {
    return {
      gauge_bar: null,
      cautions: [
        ...pressureCautions(vessel, null),
        caution(
          'sugar-at-closing',
          phrase`How much sugar was left at closing is not known, so nobody can say what pressure may build up. Measure it, chill the bottles soon, open one early.`,
          commonPractice(),
        ),
      ],
    };
  }
  const closed = {
    contents_mL: millilitres(size_mL * usualFill),
    headspace_mL: millilitres(size_mL * (1 - usualFill)),
    sugar_g_per_L: gramsPerLitre(sugar_g_per_L),
    closing_C: celsius(usualRoom_C),
  };
  const gauge_bar = {
    ambient: closedPressure(closed, celsius(usualRoom_C)).gauge_bar,
    at35: closedPressure(closed, celsius(warmDay_C)).gauge_bar,
  };
  return { gauge_bar, cautions: pressureCautions(vessel, gauge_bar) };
}
