import { totalMass_g } from '#core/trial/formula.ts';
import type { HeldInput, PlanInput } from '#core/trial/plan-input.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { momentOf } from './local-moment.ts';
import type { PlanDraft } from './plan-draft.ts';
import { isBlank, readAdditions } from './read-addition.ts';
import { readLevel } from './read-level.ts';
import { readDays, readDiameter, readPressure, readTemperature, readVolume, type Typed } from './read-quantity.ts';
import { fault, gap, type Said } from './said.ts';
import { words } from './words.ts';

export type Base = ValueOf<'bases:list'>['bases'][number];

export interface ReadPlan {
  /** Enough to draw from: what is missing has a stand-in that causes no problem of its own. */
  readonly plan: PlanInput;
  readonly said: readonly Said[];
  readonly base: Base | null;
}

/** While these are unknown the drawing goes on: an empty jar of a litre, filled from a sea of base. */
const standIns = { baseEach_mL: 0, baseAvailable_mL: 1_000_000, capacity_mL: 1000 } as const;

class Sayings {
  readonly said: Said[] = [];

  /** The number, or the stand-in with what there is to say about it. */
  number<Instead>(typed: Typed, at: string, instead: Instead, missing?: string): number | Instead {
    if (typed.kind === 'number') return typed.value;
    if (typed.kind === 'fault') this.said.push(fault(at, typed.message));
    else if (missing !== undefined) this.said.push(gap(at, missing));
    return instead;
  }
}

function readHeld(draft: PlanDraft, sayings: Sayings, { measured }: Measures): HeldInput {
  const { factor, held } = draft;
  const filled = held.additions.filter((row) => !isBlank(row)).length;
  const isShare = factor === 'amount' && filled === 1;
  const { additions, said } = readAdditions(factor === 'formula' ? [] : held.additions, 'held.additions', {
    measured,
    ...(isShare ? { massInstead_g: 100 } : {}),
  });
  sayings.said.push(...said);
  const days = factor === 'days' ? undefined : sayings.number(readDays(held.days), 'held.days', undefined);
  const warmth =
    factor === 'temperature'
      ? undefined
      : sayings.number(readTemperature(held.temperature, draft.measures), 'held.temperature_C', undefined);
  const also: Record<string, string> = {};
  held.also.forEach(({ name, value }, place) => {
    const [said_, meant] = [name.trim(), value.trim()];
    if (said_ === '' && meant === '') return;
    if (said_ === '') sayings.said.push(gap(`held.also.${place}.name`, words.says.alsoNameMissing));
    else if (Object.hasOwn(also, said_))
      sayings.said.push(fault(`held.also.${place}.name`, words.says.alsoTwice(said_)));
    else if (said_.length > 200 || meant.length > 400)
      sayings.said.push(fault(`held.also.${place}.name`, words.says.tooLong));
    else also[said_] = meant;
  });
  return {
    additions: totalMass_g(additions) > 0 ? additions : [],
    ...(days === undefined ? {} : { days }),
    ...(factor === 'cover' || held.cover === '' ? {} : { cover: held.cover }),
    ...(warmth === undefined ? {} : { temperature_C: warmth }),
    also,
  };
}

function availableOf(draft: PlanDraft, base: Base | null, sayings: Sayings): number {
  const at = 'baseAvailable_mL';
  if (base !== null) {
    if (base.left_mL > 0) return base.left_mL;
    sayings.said.push(fault(at, words.says.baseUsedUp(base.name)));
    return standIns.baseAvailable_mL;
  }
  return sayings.number(
    readVolume(draft.baseAvailable, draft.measures),
    at,
    standIns.baseAvailable_mL,
    words.says.baseAvailableMissing,
  );
}

/** The whole plan as typed, read into what the core plans with, and a sentence for each place that is missing or can't be read. */
export function readPlan(draft: PlanDraft, bases: readonly Base[], measures: Measures): ReadPlan {
  const sayings = new Sayings();
  const base = bases.find(({ id }) => id === draft.base) ?? null;
  const question = draft.question.trim();
  if (question === '') sayings.said.push(gap('question', words.says.questionMissing));
  if (question.length > 400) sayings.said.push(fault('question', words.says.tooLong));
  const levels = draft.levels.map((_, position) => readLevel(draft, position, measures));
  sayings.said.push(...levels.flatMap(({ said }) => said));
  const held = readHeld(draft, sayings, measures);
  const { vessel } = draft;
  const diameter = sayings.number(readDiameter(vessel.diameter, draft.measures), 'vessel.diameter_mm', undefined);
  const rated = sayings.number(readPressure(vessel.rated, draft.measures), 'vessel.ratedGauge_bar', undefined);
  const start = momentOf(draft.start);
  if (start === null) sayings.said.push(gap('start', words.says.startMissing));
  const control = draft.levels.findIndex(({ key }) => key === draft.control);
  const plan: PlanInput = {
    question,
    factor: draft.factor,
    levels: levels.map(({ level }) => level),
    control: levels[control]?.level.name ?? '',
    held,
    replicates: draft.replicates,
    calendar: draft.calendar,
    baseAvailable_mL: availableOf(draft, base, sayings),
    baseEach_mL: sayings.number(
      readVolume(draft.baseEach, draft.measures),
      'baseEach_mL',
      standIns.baseEach_mL,
      words.says.baseEachMissing,
    ),
    vessel: {
      kind: vessel.kind,
      capacity_mL: sayings.number(
        readVolume(vessel.capacity, draft.measures),
        'vessel.capacity_mL',
        standIns.capacity_mL,
        words.says.capacityMissing,
      ),
      ...(diameter === undefined ? {} : { diameter_mm: diameter }),
      ...(rated === undefined ? {} : { ratedGauge_bar: rated }),
    },
    start: start ?? '2026-01-01T09:00:00Z',
    seed: draft.seed,
  };
  return { plan, said: sayings.said, base };
}
