import { absoluteZero_C } from '#core/units/branded.ts';
import { phrase } from '#core/words/phrase.ts';
import { foodFractions } from './food-composition.ts';
import type { JarAddition } from './jar-input.ts';
import { jarVolume_mL } from './jar-volume.ts';
import { knownSugars } from './known-sugars.ts';
import type { ResolvedAddition } from './resolve-addition.ts';

/** What is wrong with something typed: a code for programs, a sentence for people, the place. */
export interface InputProblem {
  readonly code:
    | 'out-of-range'
    | 'below-absolute-zero'
    | 'unit-mix-up'
    | 'jar-too-small'
    | 'sugar-beyond-saturation'
    | 'ingredient-unknown'
    | 'composition-impossible'
    | 'not-frozen';
  readonly message: string;
  readonly path: readonly (string | number)[];
}

/** The problem of a value outside its range, with the range; `null` when it lies inside. */
export function outside(
  path: readonly (string | number)[],
  what: string,
  value: number,
  low: number,
  high: number,
  unit: string,
): InputProblem | null {
  if (value >= low && value <= high) return null;
  const permitted = phrase`Permitted: ${low} to ${Number(high.toPrecision(4))} ${unit}.`;
  if (unit === '°C' && value < absoluteZero_C) {
    return {
      code: 'below-absolute-zero',
      message: phrase`${what} is ${value} °C, below absolute zero (−${273.15} °C). ${permitted}`,
      path,
    };
  }
  return { code: 'out-of-range', message: phrase`${what} is ${value} ${unit}. ${permitted}`, path };
}

/** What is wrong with one addition, or `null`. `known` is what `resolveAddition` made of it. */
export function additionProblem(
  addition: JarAddition,
  known: ResolvedAddition | null,
  place: number,
  capacity_mL: number,
): InputProblem | null {
  const path = ['additions', place] as const;
  if (known === null) {
    return {
      code: 'ingredient-unknown',
      message: phrase`The pantry has no “${String(addition.ingredient)}”. Choose one of its names, or give what 100 g are made of.`,
      path: [...path, 'ingredient'],
    };
  }
  const own = typeof addition.ingredient !== 'string';
  return (
    (own ? compositionProblem(known, [...path, 'ingredient']) : null) ??
    amountProblem(known, path, capacity_mL) ??
    warmth(addition, known, path)
  );
}

function compositionProblem({ name, composition }: ResolvedAddition, path: (string | number)[]): InputProblem | null {
  const parts = Object.entries(composition).filter(([, value]) => typeof value === 'number') as [string, number][];
  for (const [part, value] of parts) {
    const problem = outside([...path, part], phrase`${part} of ${name}`, value, 0, 100, phrase`g per 100 g`);
    if (problem) return problem;
  }
  const sugars = knownSugars(composition);
  const kinds = (composition.sucrose_g ?? 0) + (composition.glucose_g ?? 0) + (composition.fructose_g ?? 0);
  const overshoot = sugars !== null && kinds > sugars.sucrose_g + sugars.hexose_g + 1;
  try {
    foodFractions(composition);
  } catch {
    return impossible(name, phrase`its parts add up to more than 100 g per 100 g`, path);
  }
  return overshoot ? impossible(name, phrase`its kinds of sugar add up to more than its sugars`, path) : null;
}

function impossible(name: string, why: string, path: (string | number)[]): InputProblem {
  return { code: 'composition-impossible', message: phrase`${name}: ${why}. Permitted: up to 100 g together.`, path };
}

function amountProblem(
  known: ResolvedAddition,
  path: readonly (string | number)[],
  capacity_mL: number,
): InputProblem | null {
  const { name, mass_g } = known;
  const at = [...path, 'mass_g'];
  const problem = outside(at, name, mass_g, 0, 1_000_000_000, 'g');
  if (problem) return problem;
  const room_mL = jarVolume_mL(0, [known]);
  if (room_mL <= capacity_mL) return null;
  const most_g = Math.floor((mass_g * capacity_mL) / room_mL);
  const permitted = phrase`Permitted: 0 to ${most_g} g in a jar of ${capacity_mL} mL.`;
  return mass_g >= 5000 && room_mL > 3 * capacity_mL
    ? {
        code: 'unit-mix-up',
        message: phrase`${mass_g / 1000} kg of ${name}: did you mean ${mass_g / 1000} g? ${permitted}`,
        path: at,
      }
    : { code: 'jar-too-small', message: phrase`${mass_g} g of ${name} do not fit the jar. ${permitted}`, path: at };
}

function warmth(
  addition: JarAddition,
  known: ResolvedAddition,
  path: readonly (string | number)[],
): InputProblem | null {
  const at = [...path, 'temperature_C'];
  const what = phrase`The temperature of ${known.name}`;
  if (addition.state !== 'frozen') return outside(at, what, known.temperature_C, -2, 100, '°C');
  const problem = outside(at, what, known.temperature_C, -40, 100, '°C');
  if (problem || known.temperature_C <= 0) return problem;
  return {
    code: 'not-frozen',
    message: phrase`${known.name} at ${known.temperature_C} °C is not frozen. Permitted: −40 to 0 °C; or call it fresh.`,
    path: at,
  };
}
