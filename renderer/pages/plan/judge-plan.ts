import type { JarVolumeOf } from '#core/trial/feasibility.ts';
import type { PlanNote, PlanProblem } from '#core/trial/plan-input.ts';
import { planTrial, type TrialPlan } from '#core/trial/plan-trial.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { newLevel, type PlanDraft } from './plan-draft.ts';
import { type Base, type ReadPlan, readPlan } from './read-plan.ts';
import type { Said } from './said.ts';
import { type WayOut, waysOut } from './ways-out.ts';

/** A sentence with the ways out of what it says. */
export interface Sentence extends Said {
  readonly ways: readonly WayOut[];
}

export interface JudgedPlan extends ReadPlan {
  readonly planned: TrialPlan;
  readonly sentences: readonly Sentence[];
  readonly notes: readonly PlanNote[];
  /** True when nothing is missing and nothing stands against it. */
  readonly isReady: boolean;
}

/** Problems that only say what is not yet filled in. */
const notYetSaid: readonly string[] = ['held-missing', 'no-control', 'level-value-missing'];

function isBlankLevel(draft: PlanDraft, position: number): boolean {
  const level = draft.levels[position];
  return level !== undefined && JSON.stringify({ ...newLevel([]), key: level.key }) === JSON.stringify(level);
}

/** Problems that another sentence at the same place has said already are left out. */
function problemSaid(draft: PlanDraft, said: readonly Said[], { code, message, path }: PlanProblem): Said[] {
  const at = path.join('.');
  const inside = said.some((one) => one.at === at || one.at.startsWith(`${at}.`));
  const ofLevel =
    path[0] === 'levels' && path.length > 1 && said.some((one) => one.at.startsWith(`levels.${path[1]}.`));
  if (inside || (ofLevel && code !== 'level-name-twice')) return [];
  const isBlank = code === 'levels-alike' && isBlankLevel(draft, Number(path[1]));
  return [{ at, message, code, kind: notYetSaid.includes(code) || isBlank ? 'gap' : 'problem' }];
}

/** The places in the order of the form. */
const places = [
  'question',
  'levels',
  'control',
  'replicates',
  'base',
  'baseAvailable_mL',
  'baseEach_mL',
  'vessel',
  'held',
  'start',
];

function byPlace(a: Said, b: Said): number {
  const [first, second] = [a, b].map(({ at }) => at.split('.'));
  const rank = (path: readonly string[] | undefined) => places.indexOf(path?.[0] ?? '');
  // A sentence about all jars stands below them.
  const position = (path: readonly string[] | undefined) => Number(path?.[1] ?? 99) || 0;
  return rank(first) - rank(second) || (first?.[0] === 'levels' ? position(first) - position(second) : 0);
}

/** Reads a plan as typed and has the core plan it: the jars to draw, and every sentence at its place. */
export function judgePlan(
  draft: PlanDraft,
  { bases, measures, volumeOf }: { bases: readonly Base[]; measures: Measures; volumeOf: JarVolumeOf },
): JudgedPlan {
  const read = readPlan(draft, bases, measures);
  const { plan } = read;
  const planned = planTrial(plan, volumeOf, measures);
  const problems = planned.problems.flatMap((problem) => problemSaid(draft, read.said, problem));
  const about = { draft, plan, planned, volumeOf, measures };
  const sentences = [...read.said, ...problems]
    .toSorted(byPlace)
    .map((said) => ({ ...said, ways: waysOut(said, about) }));
  return { ...read, planned, sentences, notes: planned.notes, isReady: sentences.length === 0 };
}
