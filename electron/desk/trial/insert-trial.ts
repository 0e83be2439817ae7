import { totalMass_g } from '#core/trial/formula.ts';
import type { TrialPlan } from '#core/trial/plan-trial.ts';
import type { InputOf } from '#shared/contract/all-requests.ts';
import { storedMoment } from '#store/stored-moment.ts';
import type { Writer } from '#store/writer.ts';

export interface SavedTrial {
  trial: string;
  jars: { id: string; label: string; level: string }[];
}

/** Writes a feasible plan as a trial with its levels and jars. */
export function insertTrial(writer: Writer, input: InputOf<'trials:save'>, plan: TrialPlan): SavedTrial {
  const { vessel, held } = input;
  const trial = writer.insert('trials', {
    question: input.question,
    factor: input.factor,
    calendar: input.calendar,
    base_id: input.base ?? null,
    base_each_mL: input.baseEach_mL,
    replicates: input.replicates,
    vessel_kind: vessel.kind,
    vessel_capacity_mL: vessel.capacity_mL,
    vessel_diameter_mm: vessel.diameter_mm ?? null,
    vessel_rated_gauge_bar: vessel.ratedGauge_bar ?? null,
    starts_at: storedMoment(input.start),
    held: JSON.stringify({
      additions: held.additions,
      days: held.days ?? null,
      cover: held.cover ?? null,
      temperature_C: held.temperature_C ?? null,
      also: held.also,
    }),
    seed: input.seed,
    closed_at: null,
    note: input.note ?? null,
  });
  const levels = input.levels.map((level, position) => {
    const formula = plan.formulas[position];
    const row = writer.insert('levels', {
      trial_id: trial.id,
      position: position + 1,
      name: level.name,
      value: level.value ?? (input.factor === 'amount' && formula != null ? totalMass_g(formula.additions) : null),
      is_control: level.name === input.control ? 1 : 0,
      formula: JSON.stringify(formula),
    });
    return { name: level.name, id: row.id };
  });
  const jars = plan.jars.map((jar) => {
    const row = writer.insert('jars', {
      trial_id: trial.id,
      level_id: levels.find(({ name }) => name === jar.level)?.id ?? '',
      label: jar.label,
      replicate: jar.replicate,
      base_mL: jar.base_mL,
      planned_start: storedMoment(jar.start),
      planned_pull: storedMoment(jar.pull),
      started_at: null,
      pulled_at: null,
      strained_at: null,
      discarded_at: null,
      discard_reason: null,
    });
    return { id: row.id, label: jar.label, level: jar.level };
  });
  return { trial: trial.id, jars };
}
