import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Formula } from './formula.ts';
import type { PlanInput, PlanProblem } from './plan-input.ts';

/** What a jar's additions and base come to, by volume. */
export interface JarVolume {
  readonly volume_mL: number;
  /** Ingredients whose density had to be guessed. */
  readonly uncertain: readonly string[];
}
export type JarVolumeOf = (base_mL: number, additions: Formula['additions']) => JarVolume;

/** How sentences write quantities: a kitchen may measure in cups. */
export interface PlanMeasures {
  readonly volume: (volume_mL: number) => string;
  readonly temperature: (temperature_C: number) => string;
}

export const metricMeasures: PlanMeasures = {
  volume: (volume_mL) => phrase`${round(volume_mL)} mL`,
  temperature: (temperature_C) => `${shownNumber(round(temperature_C))} °C`,
};

const shortestTrial_days = 1 / 24;
const longestTrial_days = 365;
const mostJars = 96;

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function dayProblems(
  plan: PlanInput,
  formulas: readonly (Formula | null)[],
  { temperature }: PlanMeasures,
): PlanProblem[] {
  const problems: PlanProblem[] = [];
  formulas.forEach((formula, position) => {
    if (formula === null) return;
    const own = plan.factor === 'formula' ? plan.levels[position] : undefined;
    const path =
      plan.factor === 'days'
        ? ['levels', position, 'value']
        : own?.days === undefined
          ? ['held', 'days']
          : ['levels', position, 'days'];
    const name = plan.levels[position]?.name ?? '';
    if (!(formula.days >= shortestTrial_days)) {
      const message =
        formula.days > 0
          ? phrase`“${name}” would be pulled almost at once (${formula.days} days). Give it an hour or more; for the plain base, taste a jar that was never filled with fruit.`
          : phrase`“${name}” would be pulled before it starts (${formula.days} days). Give it an hour or more; for the plain base, taste a jar that was never filled with fruit.`;
      problems.push({ code: 'pull-before-start', message, path });
    } else if (formula.days > longestTrial_days) {
      const message = phrase`“${name}” would stand ${formula.days} days; a trial may last up to ${longestTrial_days}.`;
      problems.push({ code: 'too-long', message, path });
    }
    if (formula.temperature_C !== null && (formula.temperature_C < 0 || formula.temperature_C > 45)) {
      const where =
        plan.factor === 'temperature'
          ? ['levels', position, 'value']
          : own?.temperature_C === undefined
            ? ['held', 'temperature_C']
            : ['levels', position, 'temperature_C'];
      const message = phrase`At ${temperature(formula.temperature_C)} these cultures do not work; choose ${temperature(0)} to ${temperature(45)}.`;
      problems.push({ code: 'too-warm-or-cold', message, path: where });
    }
  });
  // Held days are one field: one sentence is enough.
  return plan.factor === 'days'
    ? problems
    : problems.filter(({ path }, at) => problems.findIndex((p) => String(p.path) === String(path)) === at);
}

/** The most base each jar can get out of what there is, in whole mL. */
export function shareOfBase_mL({ levels, replicates, baseAvailable_mL }: PlanInput): number {
  return Math.floor(baseAvailable_mL / (levels.length * replicates));
}

function baseProblems(plan: PlanInput, { volume }: PlanMeasures): PlanProblem[] {
  const jars = plan.levels.length * plan.replicates;
  if (jars > mostJars) {
    const message = phrase`${plan.levels.length} levels with ${plan.replicates} jars each are ${jars} jars; a trial may have up to ${mostJars}.`;
    return [{ code: 'too-many-jars', message, path: ['replicates'] }];
  }
  const needed = jars * plan.baseEach_mL;
  if (needed <= plan.baseAvailable_mL * (1 + 1e-9)) return [];
  const message = phrase`${jars} jars with ${volume(plan.baseEach_mL)} of base each need ${volume(needed)}; there are ${volume(plan.baseAvailable_mL)}. Make ${volume(needed - plan.baseAvailable_mL)} more, pour ${volume(shareOfBase_mL(plan))} into each jar, or leave jars out.`;
  return [{ code: 'not-enough-base', message, path: ['baseAvailable_mL'] }];
}

/** The fullest jar that runs over, and how much base would leave a tenth of it free. */
export function fullestJar(
  plan: PlanInput,
  formulas: readonly (Formula | null)[],
  volumeOf: JarVolumeOf,
): { position: number; volume_mL: number; fits_mL: number } | null {
  const capacity = plan.vessel.capacity_mL;
  const full = formulas.flatMap((formula, position) => {
    if (formula === null) return [];
    const { volume_mL } = volumeOf(plan.baseEach_mL, formula.additions);
    return volume_mL > capacity ? [{ position, volume_mL }] : [];
  });
  const worst = full.sort((a, b) => b.volume_mL - a.volume_mL)[0];
  return worst === undefined
    ? null
    : { ...worst, fits_mL: Math.floor(plan.baseEach_mL - (worst.volume_mL - capacity * 0.9)) };
}

function overfull(
  plan: PlanInput,
  formulas: readonly (Formula | null)[],
  volumeOf: JarVolumeOf,
  { volume }: PlanMeasures,
): PlanProblem[] {
  const worst = fullestJar(plan, formulas, volumeOf);
  if (worst === null) return [];
  const name = plan.levels[worst.position]?.name ?? '';
  const wayOut =
    worst.fits_mL > 0
      ? phrase`Pour ${volume(worst.fits_mL)} of base into each jar, or take larger jars.`
      : phrase`Take larger jars, or less fruit.`;
  const message = phrase`“${name}” would hold ${volume(worst.volume_mL)} in a jar of ${volume(plan.vessel.capacity_mL)}. ${wayOut}`;
  return [{ code: 'jar-overfull', message, path: ['baseEach_mL'] }];
}

/** Why this plan can't work, apart from its levels: days, temperature, base and jar size. */
export function feasibility(
  plan: PlanInput,
  formulas: readonly (Formula | null)[],
  volumeOf: JarVolumeOf,
  measures: PlanMeasures,
): PlanProblem[] {
  return [
    ...dayProblems(plan, formulas, measures),
    ...baseProblems(plan, measures),
    ...overfull(plan, formulas, volumeOf, measures),
  ];
}
