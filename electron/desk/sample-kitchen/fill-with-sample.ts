import { type SeededRandom, seededRandom } from '#core/numeric/seeded-random.ts';
import { planTrial } from '#core/trial/plan-trial.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Writer } from '#store/writer.ts';
import type { Watch } from '../handler.ts';
import { compositionIn, jarVolumeIn } from '../pantry/pantry-lookup.ts';
import { insertVersion } from '../recipe/insert-version.ts';
import { insertTasting } from '../tasting/insert-tasting.ts';
import { insertTrial, type SavedTrial } from '../trial/insert-trial.ts';
import { insertSampleLog } from './sample-log.ts';
import { type SamplePlan, samplePlans } from './sample-plans.ts';
import { insertSampleScores } from './sample-scores.ts';

const tasterNames = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'].map((letter) => `Taster ${letter}`);

function insertTasters(writer: Writer): string[] {
  return tasterNames.map(
    (name, position) =>
      writer.insert('tasters', {
        name,
        avoids: position === 4 ? '["nuts"]' : '[]',
        avoids_alcohol: position === 7 ? 1 : 0,
        note: null,
      }).id,
  );
}

function hoursBefore(now: Date, hours: number): string {
  return new Date(now.getTime() - hours * 3_600_000).toISOString();
}

function insertBases(writer: Writer, now: Date): { spring: string; summer: string } {
  const culture = writer.insert('cultures', {
    name: 'Green tea mother (sample)',
    kind: 'kombucha mother',
    weight_g: 240,
    refreshed_at: hoursBefore(now, 24 * 9),
    rests: 'cloth-covered crock on the shelf',
    note: null,
    refresh_days: null,
    parent_id: null,
  });
  const base = (name: string, hoursAgo: number, volume_mL: number) =>
    writer.insert('bases', {
      culture_id: culture.id,
      name,
      made_at: hoursBefore(now, hoursAgo),
      strained_at: hoursBefore(now, hoursAgo - 24 * 7),
      volume_mL,
      temperature_C: 23,
      sugar_start_g_per_L: 60,
      sugar_now_g_per_L: 38,
      alcohol_pctVol: 0.3,
      note: 'Invented, like everything in the sample kitchen.',
      planned_hours: 24 * 7,
      went_in: null,
    }).id;
  return { spring: base('Green tea kombucha 14', 24 * 32, 6000), summer: base('Green tea kombucha 15', 24 * 13, 5000) };
}

/** Plans a sample trial, and starts and pulls its jars as far as their time has come. */
function insertSampleTrial(writer: Writer, kitchen: Kitchen, sample: SamplePlan, now: Date): SavedTrial {
  const plan = planTrial(sample.plan, jarVolumeIn(compositionIn(kitchen)));
  const [problem] = plan.problems;
  if (problem !== undefined) throw new Failure('internal', `The sample plan does not work: ${problem.message}`);
  const saved = insertTrial(writer, sample.plan, plan);
  const present = now.toISOString();
  for (const { id } of saved.jars) {
    const jar = writer.row('jars', id);
    if (jar === undefined || jar.planned_start > present) continue;
    const pulled_at = jar.planned_pull <= present ? jar.planned_pull : null;
    writer.update('jars', id, { started_at: jar.planned_start, pulled_at });
  }
  return saved;
}

function jarsToTruth(saved: SavedTrial, sample: SamplePlan) {
  return new Map(saved.jars.map(({ id, level }) => [id, sample.truth[level] ?? {}] as const));
}

interface TastingSketch {
  readonly name: string;
  readonly tasters: string[];
  readonly hoursAgo: number;
  readonly missed: (jars: SavedTrial['jars']) => Set<string>;
  readonly close: boolean;
  readonly codes: readonly string[];
}

function insertSampleTasting(
  writer: Writer,
  random: SeededRandom,
  now: Date,
  saved: SavedTrial,
  sample: SamplePlan,
  sketch: TastingSketch,
): string {
  const input = {
    trial: saved.trial,
    name: sketch.name,
    samples: saved.jars.map(({ id }) => ({ jar: id, served_mL: 60 })),
    tasters: sketch.tasters,
    replicates: 1,
    served_C: 8,
    seed: sample.plan.seed,
  };
  const heldAt = hoursBefore(now, sketch.hoursAgo);
  const tasting = insertTasting(writer, input, sketch.codes, heldAt);
  insertSampleScores(writer, random, {
    tasting,
    truthOfJar: jarsToTruth(saved, sample),
    missed: sketch.missed(saved.jars),
  });
  if (sketch.close) writer.update('tastings', tasting, { closed_at: hoursBefore(now, sketch.hoursAgo - 1) });
  return tasting;
}

/** Fills an empty kitchen with the invented example in one step; returns how many rows it wrote. */
export function fillWithSample(kitchen: Kitchen, watch: Watch): number {
  const note = { request: 'kitchen:sample', summary: 'Fill the kitchen with the sample', asSample: true };
  const now = kitchen.now();
  return kitchen.write(note, (writer) => {
    const random = seededRandom(2026);
    const tasters = insertTasters(writer);
    const plans = samplePlans(now, insertBases(writer, now));
    const place = (sample: SamplePlan) => insertSampleTrial(writer, kitchen, sample, now);
    watch.progress(1, 5);
    const days = place(plans.days);
    insertSampleTasting(writer, random, now, days, plans.days, {
      name: 'Pear and ginger by days',
      tasters,
      hoursAgo: 24 * 19,
      missed: (jars) => new Set([`Taster F/${jars[0]?.id}`]),
      close: true,
      codes: ['274', '859', '613', '407'],
    });
    watch.progress(2, 5);
    const amount = place(plans.amount);
    insertSampleTasting(writer, random, now, amount, plans.amount, {
      name: 'Apricot by weight',
      tasters: tasters.slice(0, 6),
      hoursAgo: 24 * 11,
      missed: () => new Set(),
      close: true,
      codes: ['358', '926', '741'],
    });
    watch.progress(3, 5);
    const state = place(plans.state);
    insertSampleLog(writer, { days, state }, now);
    watch.progress(4, 5);
    const formula = place(plans.formula);
    insertSampleTasting(writer, random, now, formula, plans.formula, {
      name: 'Summer stall, first round',
      tasters: tasters.slice(0, 7),
      hoursAgo: 3,
      missed: (jars) => new Set(['E', 'F', 'G'].flatMap((letter) => jars.map(({ id }) => `Taster ${letter}/${id}`))),
      close: false,
      codes: ['582', '164', '937'],
    });
    insertVersion(writer, kitchen, {
      trial: days.trial,
      level: '3 days',
      name: 'Pear and ginger, three days',
      why: 'Liked best of four days; the fourth day brought vinegar.',
    });
    watch.progress(5, 5);
    return (
      writer.one<{ n: number }>(
        'SELECT count(DISTINCT row_id) AS n FROM changes WHERE step_id = (SELECT max(id) FROM steps)',
      )?.n ?? 0
    );
  });
}
