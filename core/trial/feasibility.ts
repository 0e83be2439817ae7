import type { Formula } from './formula.ts';
import type { PlanInput, PlanProblem } from './plan-input.ts';

/** What a jar's additions and base come to, by volume. */
export interface JarVolume {
  readonly volume_mL: number;
  /** Ingredients whose density had to be guessed. */
  readonly uncertain: readonly string[];
}
export type JarVolumeOf = (base_mL: number, additions: Formula['additions']) => JarVolume;

const shortestTrial_days = 1 / 24;
const longestTrial_days = 365;
const mostJars = 96;

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function dayProblems(plan: PlanInput, formulas: readonly (Formula | null)[]): PlanProblem[] {
  const problems: PlanProblem[] = [];
  formulas.forEach((formula, position) => {
    if (formula === null) return;
    const path = plan.factor === 'days' ? ['levels', position, 'value'] : ['held', 'days'];
    const name = plan.levels[position]?.name ?? '';
    if (!(formula.days >= shortestTrial_days)) {
      const message = `“${name}” would be pulled before it starts (${formula.days} days). Give it an hour or more; for the plain base, taste a jar that was never filled with fruit.`;
      problems.push({ code: 'pull-before-start', message, path });
    } else if (formula.days > longestTrial_days) {
      const message = `“${name}” would stand ${formula.days} days; a trial may last up to ${longestTrial_days}.`;
      problems.push({ code: 'too-long', message, path });
    }
    if (formula.temperature_C !== null && (formula.temperature_C < 0 || formula.temperature_C > 45)) {
      const where = plan.factor === 'temperature' ? ['levels', position, 'value'] : ['held', 'temperature_C'];
      const message = `At ${formula.temperature_C} °C these cultures do not work; choose 0 to 45 °C.`;
      problems.push({ code: 'too-warm-or-cold', message, path: where });
    }
  });
  // Held days are one field: one sentence is enough.
  return plan.factor === 'days'
    ? problems
    : problems.filter(({ path }, at) => problems.findIndex((p) => String(p.path) === String(path)) === at);
}

function baseProblems(plan: PlanInput): PlanProblem[] {
  const jars = plan.levels.length * plan.replicates;
  if (jars > mostJars) {
    const message = `${plan.levels.length} levels with ${plan.replicates} jars each are ${jars} jars; a trial may have up to ${mostJars}.`;
    return [{ code: 'too-many-jars', message, path: ['replicates'] }];
  }
  const needed = jars * plan.baseEach_mL;
  if (needed <= plan.baseAvailable_mL * (1 + 1e-9)) return [];
  const fits = Math.floor(plan.baseAvailable_mL / jars);
  const message = `${jars} jars with ${plan.baseEach_mL} mL of base each need ${round(needed)} mL; there are ${plan.baseAvailable_mL} mL. Make ${round(needed - plan.baseAvailable_mL)} mL more, pour ${fits} mL into each jar, or leave jars out.`;
  return [{ code: 'not-enough-base', message, path: ['baseAvailable_mL'] }];
}

function overfull(plan: PlanInput, formulas: readonly (Formula | null)[], volumeOf: JarVolumeOf): PlanProblem[] {
  const capacity = plan.vessel.capacity_mL;
  const full = formulas.flatMap((formula, position) => {
    if (formula === null) return [];
    const { volume_mL } = volumeOf(plan.baseEach_mL, formula.additions);
    return volume_mL > capacity ? [{ position, volume_mL }] : [];
  });
  const worst = full.sort((a, b) => b.volume_mL - a.volume_mL)[0];
  if (worst === undefined) return [];
  const name = plan.levels[worst.position]?.name ?? '';
  const fits = Math.floor(plan.baseEach_mL - (worst.volume_mL - capacity * 0.9));
  const wayOut =
    fits > 0 ? `Pour ${fits} mL of base into each jar, or take larger jars.` : 'Take larger jars, or less fruit.';
  const message = `“${name}” would hold ${Math.round(worst.volume_mL)} mL in a jar of ${capacity} mL. ${wayOut}`;
  return [{ code: 'jar-overfull', message, path: ['baseEach_mL'] }];
}

/** Why this plan can't work, apart from its levels: days, temperature, base and jar size. */
export function feasibility(
  plan: PlanInput,
  formulas: readonly (Formula | null)[],
  volumeOf: JarVolumeOf,
): PlanProblem[] {
  return [...dayProblems(plan, formulas), ...baseProblems(plan), ...overfull(plan, formulas, volumeOf)];
}
