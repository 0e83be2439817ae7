import { phrase } from '#core/words/phrase.ts';
import { type Addition, additionStates, covers, type Formula, totalMass_g } from './formula.ts';
import type { HeldInput, LevelInput, PlanInput, PlanProblem } from './plan-input.ts';

/** A level's formula, or what is missing to know it. */
export interface LevelFormula {
  readonly formula: Formula | null;
  readonly problems: readonly PlanProblem[];
}

function byName<Word extends string>(words: readonly Word[], name: string): Word | undefined {
  return words.find((word) => word === name.trim().toLowerCase());
}

/** The additions of an amount level: those held, scaled in proportion so that they weigh `grams` together. */
function scaledTo(additions: readonly Addition[], grams: number): readonly Addition[] {
  const total = totalMass_g(additions);
  if (grams === 0) return [];
  return additions.map(({ asWritten, ...addition }) => {
    const mass_g = (addition.mass_g / total) * grams;
    // "A handful" is a handful only at its own weight.
    return asWritten !== undefined && mass_g === addition.mass_g
      ? { ...addition, asWritten, mass_g }
      : { ...addition, mass_g };
  });
}

/** Less than this no kitchen scale shows. */
const leastAmount_g = 0.1;

type Finding = { readonly value: Partial<Formula> } | { readonly missing: string } | { readonly heldMissing: string };

/** What this level brings of the moved factor. */
function movedPart(factor: PlanInput['factor'], level: LevelInput, held: HeldInput): Finding {
  switch (factor) {
    case 'days':
      return level.value === undefined ? { missing: phrase`how many days` } : { value: { days: level.value } };
    case 'temperature':
      return level.value === undefined
        ? { missing: phrase`a temperature in °C` }
        : { value: { temperature_C: level.value } };
    case 'amount': {
      if (level.additions !== undefined) {
        const weighed = totalMass_g(level.additions);
        const said = level.value ?? weighed;
        if (Math.abs(said - weighed) > 0.01 * Math.max(said, weighed)) {
          return { missing: phrase`one weight: its additions weigh ${weighed} g, its number says ${said} g` };
        }
        return { value: { additions: level.additions } };
      }
      if (level.value === undefined || !(level.value === 0 || level.value >= leastAmount_g)) {
        return { missing: phrase`the grams for each jar (0, or ${leastAmount_g} and more)` };
      }
      if (held.additions.length === 0)
        return { heldMissing: phrase`what is weighed in: name the fruit under what is held` };
      return { value: { additions: scaledTo(held.additions, level.value) } };
    }
    case 'fruit':
      return level.additions === undefined
        ? { missing: phrase`its fruit and weight` }
        : { value: { additions: [...level.additions, ...held.additions] } };
    case 'state': {
      if (level.additions !== undefined) return { value: { additions: level.additions } };
      const state = level.state ?? byName(additionStates, level.name);
      if (state === undefined) return { missing: phrase`whether the fruit is fresh or frozen` };
      if (held.additions.length === 0) return { heldMissing: phrase`the fruit that is used fresh and frozen` };
      // Juice beside the fruit is neither fresh nor frozen. A temperature written for the other state must not stay.
      const solid = held.additions.some((addition) => addition.state !== 'liquid');
      const additions = held.additions.map(({ temperature_C, ...addition }) =>
        solid && addition.state === 'liquid'
          ? { ...addition, ...(temperature_C === undefined ? {} : { temperature_C }) }
          : { ...addition, state },
      );
      return { value: { additions } };
    }
    case 'cover': {
      const cover = level.cover ?? byName(covers, level.name);
      return cover === undefined ? { missing: phrase`a cover: cloth, airlock or lid` } : { value: { cover } };
    }
    case 'formula':
      return {
        value: {
          additions: level.additions ?? held.additions,
          ...(level.days === undefined ? {} : { days: level.days }),
          ...(level.cover === undefined ? {} : { cover: level.cover }),
          ...(level.temperature_C === undefined ? {} : { temperature_C: level.temperature_C }),
        },
      };
  }
}

/**
 * The whole formula of one level: what is held, with the moved factor put in.
 *
 * @param position the level's place in the plan, for the path of a problem
 * @returns the formula, or `null` with the problems
 */
export function levelFormula(
  plan: Pick<PlanInput, 'factor' | 'held'>,
  level: LevelInput,
  position: number,
): LevelFormula {
  const { factor, held } = plan;
  const found = movedPart(factor, level, held);
  if ('missing' in found) {
    const message = phrase`“${level.name}” does not say ${found.missing}. Add it to this level.`;
    return { formula: null, problems: [{ code: 'level-value-missing', message, path: ['levels', position] }] };
  }
  if ('heldMissing' in found) {
    const message = phrase`The plan does not say ${found.heldMissing}.`;
    return { formula: null, problems: [{ code: 'held-missing', message, path: ['held', 'additions'] }] };
  }
  const days = found.value.days ?? held.days;
  if (days === undefined) {
    const message = phrase`The plan does not say how many days the jars stand. Add the days under what is held.`;
    return { formula: null, problems: [{ code: 'held-missing', message, path: ['held', 'days'] }] };
  }
  return {
    formula: {
      additions: found.value.additions ?? held.additions,
      days,
      cover: found.value.cover ?? held.cover ?? null,
      temperature_C: found.value.temperature_C ?? held.temperature_C ?? null,
    },
    problems: [],
  };
}
