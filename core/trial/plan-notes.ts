import { phrase } from '#core/words/phrase.ts';
import type { JarVolumeOf } from './feasibility.ts';
import { fillOrder } from './fill-order.ts';
import type { Formula } from './formula.ts';
import type { PlanInput, PlanNote } from './plan-input.ts';

/** Above this share of the jar there is little room for froth (common practice, no source). */
const littleHeadspace = 0.9;

function calendarNote(plan: PlanInput): PlanNote | null {
  if (plan.factor !== 'days' && plan.factor !== 'formula') return null;
  return plan.calendar === 'staggered-start'
    ? {
        code: 'base-age-moves',
        message: phrase`The jars start on different days, so the base is older for the late ones: part of what you taste may be the base’s age.`,
      }
    : {
        code: 'cold-storage-moves',
        message: phrase`The jars are pulled on different days, so the early ones wait longer in the cold: part of what you taste may be that storage.`,
      };
}

/** What the maker should know about a plan, in the order it matters. */
export function planNotes(
  plan: PlanInput,
  formulas: readonly Formula[],
  labels: readonly string[],
  volumeOf: JarVolumeOf,
): PlanNote[] {
  const notes: PlanNote[] = [];
  const calendar = calendarNote(plan);
  if (calendar !== null) notes.push(calendar);
  if (plan.factor === 'days') {
    notes.push({
      code: 'control-is-today',
      message: phrase`The control is what you would do today: “${plan.control}”. The other days are compared with it.`,
    });
  }
  if (plan.factor === 'formula') {
    notes.push({
      code: 'which-not-why',
      message: phrase`Whole formulas differ in several things at once: this trial tells which is better, not why.`,
    });
  }
  if (plan.factor === 'fruit') {
    const kinds = new Set(formulas.flatMap(({ additions }) => additions.map(({ state }) => state === 'liquid')));
    if (kinds.size > 1) {
      notes.push({
        code: 'juice-beside-fruit',
        message: phrase`Juice stands beside whole fruit here: it ferments faster and hides no pieces, which is part of what you compare.`,
      });
    }
  }
  if (plan.replicates === 1) {
    notes.push({
      code: 'one-jar-a-level',
      message: phrase`With one jar a level the findings speak of these jars. A second jar of each tells the factor from the luck of a jar.`,
    });
  }
  const volumes = formulas.map(({ additions }) => volumeOf(plan.baseEach_mL, additions));
  const uncertain = [...new Set(volumes.flatMap((volume) => volume.uncertain))];
  if (uncertain.length > 0) {
    notes.push({
      code: 'volume-uncertain',
      message: phrase`What ${uncertain.join(', ')} adds in volume is not known; it was taken as 1 mL for each gram.`,
    });
  }
  if (volumes.some(({ volume_mL }) => volume_mL > littleHeadspace * plan.vessel.capacity_mL)) {
    notes.push({
      code: 'little-headspace',
      message: phrase`A jar is more than nine tenths full: leave room for the fruit to rise and for froth.`,
    });
  }
  const order = fillOrder(plan.seed, labels);
  notes.push({
    code: 'fill-order',
    message: phrase`Fill the jars in this order, so that first and last pour favour no level: ${order.join(', ')}.`,
  });
  return notes;
}
