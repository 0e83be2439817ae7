import { phrase } from '#core/words/phrase.ts';
import { additionProblem, type InputProblem, outside } from './addition-problem.ts';
import type { FoodComposition } from './food-composition.ts';
import type { JarInput } from './jar-input.ts';
import { jarVolume_mL } from './jar-volume.ts';
import { knownSugars } from './known-sugars.ts';
import { type ResolvedAddition, resolveAddition } from './resolve-addition.ts';
import { sucroseSaturation_brix, sugarSolution } from './sugar-solution.ts';

/** Sugar beyond which nothing more dissolves at 20 °C. */
const saturation_g_per_L = sugarSolution({ brix: sucroseSaturation_brix(20) }).sugar_g_per_L;
/** A jar a little too full is cautioned; one filled twice over is refused. */
const mostOverfull = 2;

/**
 * What is wrong with a jar as typed, or `null` when a sheet can be worked out.
 *
 * Checks amounts against what a kitchen can hold, fruit against its jar, sugar against saturation, temperatures against what stays
 * liquid, and looks for amounts typed in another unit. The first problem is reported, with the permitted range and the place.
 *
 * @example jarProblem({ ...jar, additions: [{ ingredient: 'raspberries', mass_g: 75000, state: 'fresh' }] })?.code // 'unit-mix-up'
 */
export function jarProblem(input: JarInput): InputProblem | null {
  return vesselProblem(input) ?? baseProblem(input) ?? contentsProblem(input);
}

function vesselProblem({ vessel, ambient_C, sealedWithSugar_g_per_L: sealed }: JarInput): InputProblem | null {
  return (
    outside(['vessel', 'capacity_mL'], phrase`The jar’s capacity`, vessel.capacity_mL, 10, 1_000_000, 'mL') ??
    optional(vessel.diameter_mm, (value) =>
      outside(['vessel', 'diameter_mm'], phrase`The diameter`, value, 10, 2000, 'mm'),
    ) ??
    optional(vessel.ratedGauge_bar, (value) =>
      outside(['vessel', 'ratedGauge_bar'], phrase`The rated pressure`, value, 0, 50, 'bar'),
    ) ??
    outside(['ambient_C'], phrase`The room’s temperature`, ambient_C, -1, 45, '°C') ??
    optional(sealed, (value) =>
      outside(['sealedWithSugar_g_per_L'], phrase`Sugar at closing`, value, 0, saturation_g_per_L, 'g/L'),
    )
  );
}

function baseProblem({ vessel, base }: JarInput): InputProblem | null {
  const volume = base.volume_mL;
  const problem = outside(['base', 'volume_mL'], phrase`The base`, volume, 0.1, 1_000_000, 'mL');
  if (problem) return problem;
  const share = volume / vessel.capacity_mL;
  if (share > mostOverfull) {
    const mixUp = share > 100;
    return {
      code: mixUp ? 'unit-mix-up' : 'jar-too-small',
      message: mixUp
        ? phrase`${volume} mL of base in a jar of ${vessel.capacity_mL} mL: did you mean ${volume / 1000} mL? Permitted: ${0.1} to ${vessel.capacity_mL} mL.`
        : phrase`${volume} mL of base in a jar of ${vessel.capacity_mL} mL. Permitted: ${0.1} to ${vessel.capacity_mL} mL.`,
      path: ['base', 'volume_mL'],
    };
  }
  if (share < 0.005 && share * 1000 <= 1.5) {
    return {
      code: 'unit-mix-up',
      message: phrase`${volume} mL of base in a jar of ${vessel.capacity_mL} mL: did you mean ${volume} L? Permitted: ${0.1} to ${vessel.capacity_mL} mL.`,
      path: ['base', 'volume_mL'],
    };
  }
  return (
    outside(['base', 'temperature_C'], phrase`The base’s temperature`, base.temperature_C, -2, 100, '°C') ??
    optional(base.sugar_g_per_L ?? undefined, (value) =>
      outside(['base', 'sugar_g_per_L'], phrase`The base’s sugar`, value, 0, saturation_g_per_L, 'g/L'),
    ) ??
    optional(base.alcohol_pctVol, (value) =>
      outside(['base', 'alcohol_pctVol'], phrase`The base’s alcohol`, value, 0, 20, '% vol'),
    )
  );
}

function contentsProblem(input: JarInput): InputProblem | null {
  const resolved: ResolvedAddition[] = [];
  for (const [place, addition] of input.additions.entries()) {
    const known = resolveAddition(addition, input.ambient_C);
    const problem = additionProblem(addition, known, place, input.vessel.capacity_mL);
    if (problem) return problem;
    if (known) resolved.push(known);
  }
  const room_mL = jarVolume_mL(0, resolved);
  if (room_mL > input.vessel.capacity_mL) {
    return {
      code: 'jar-too-small',
      message: phrase`The additions alone take ${Math.round(room_mL)} mL; the jar holds ${input.vessel.capacity_mL} mL. Permitted: up to that together.`,
      path: ['additions'],
    };
  }
  const total_g_per_L = (1000 * sugarOf(input, resolved)) / jarVolume_mL(input.base.volume_mL, resolved);
  return total_g_per_L <= saturation_g_per_L
    ? null
    : {
        code: 'sugar-beyond-saturation',
        message: phrase`${Math.round(total_g_per_L)} g of sugar per litre do not dissolve. Permitted: up to ${Math.round(saturation_g_per_L)} g/L.`,
        path: ['additions'],
      };
}

/** Grams of sugar in the jar, as far as they are known. */
function sugarOf({ base }: JarInput, additions: readonly { mass_g: number; composition: FoodComposition }[]): number {
  let sugar_g = ((base.sugar_g_per_L ?? 0) * base.volume_mL) / 1000;
  for (const { mass_g, composition } of additions) {
    const sugars = knownSugars(composition);
    sugar_g += sugars === null ? 0 : (mass_g * (sugars.sucrose_g + sugars.hexose_g)) / 100;
  }
  return sugar_g;
}

function optional(value: number | undefined, check: (value: number) => InputProblem | null): InputProblem | null {
  return value === undefined ? null : check(value);
}
