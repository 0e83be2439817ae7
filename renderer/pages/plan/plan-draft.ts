import '#renderer/app/quiet-zod.ts';
import { z } from 'zod';
import { factors } from '#core/trial/factor.ts';
import { additionStates, covers, vesselKinds } from '#core/trial/formula.ts';
import { calendars } from '#core/trial/plan-input.ts';

// A plan as it is typed: texts, not numbers, so that leaving and coming back finds every letter as it was.

const text = z.string().max(4000);
/** The empty word stands for "not said". */
const orUnsaid = <Words extends readonly string[]>(words: Words) => z.enum(['', ...words] as ['', ...Words]);

const additionDraft = z.strictObject({
  key: text,
  ingredient: text,
  /** "75 g", "1/2 cup sliced", "a handful". */
  amount: text,
  /** What the scale says, where the amount alone does not tell. */
  weight: text,
  state: orUnsaid(additionStates),
  end: orUnsaid(['left-in', 'strained-out'] as const),
});

const levelDraft = z.strictObject({
  key: text,
  name: text,
  value: text,
  state: orUnsaid(additionStates),
  cover: orUnsaid(covers),
  days: text,
  temperature: text,
  additions: z.array(additionDraft).max(40),
});

export const planDraft = z.strictObject({
  /** The measures that bare numbers are in. */
  measures: z.enum(['metric', 'us']),
  question: text,
  factor: z.enum(factors),
  levels: z.array(levelDraft).max(24),
  /** The key of a level. */
  control: text,
  replicates: z.int().min(1).max(12),
  /** A base's id; empty for "so much at hand". */
  base: text,
  baseAvailable: text,
  baseEach: text,
  vessel: z.strictObject({ kind: z.enum(vesselKinds), capacity: text, diameter: text, rated: text }),
  held: z.strictObject({
    additions: z.array(additionDraft).max(40),
    days: text,
    cover: orUnsaid(covers),
    temperature: text,
    also: z.array(z.strictObject({ key: text, name: text, value: text })).max(40),
  }),
  calendar: z.enum(calendars),
  /** Local time as a date field writes it: 2026-05-01T09:00. */
  start: text,
  seed: z.int(),
});

export type PlanDraft = z.infer<typeof planDraft>;
export type LevelDraft = PlanDraft['levels'][number];
export type AdditionDraft = PlanDraft['held']['additions'][number];
export type AlsoDraft = PlanDraft['held']['also'][number];

/** A key that none of these has yet. @example freshKey([{ key: '1' }]) // '2' */
export function freshKey(taken: readonly { readonly key: string }[]): string {
  return String(Math.max(0, ...taken.map(({ key }) => Number(key) || 0)) + 1);
}

export function newAddition(taken: readonly AdditionDraft[]): AdditionDraft {
  return { key: freshKey(taken), ingredient: '', amount: '', weight: '', state: '', end: '' };
}

export function newLevel(taken: readonly LevelDraft[]): LevelDraft {
  return {
    key: freshKey(taken),
    name: '',
    value: '',
    state: '',
    cover: '',
    days: '',
    temperature: '',
    additions: [newAddition([])],
  };
}

/**
 * An empty plan with two jars to fill in.
 *
 * @param start local time, 2026-05-01T09:00
 * @param seed for the fill order
 */
export function newPlan(measures: PlanDraft['measures'], start: string, seed: number): PlanDraft {
  const first = newLevel([]);
  return {
    measures,
    question: '',
    factor: 'days',
    levels: [first, newLevel([first])],
    control: '',
    replicates: 1,
    base: '',
    baseAvailable: '',
    baseEach: '',
    vessel: { kind: 'open-jar', capacity: measures === 'us' ? '1 qt' : '1000', diameter: '', rated: '' },
    held: { additions: [newAddition([])], days: '', cover: '', temperature: '', also: [] },
    calendar: 'staggered-pull',
    start,
    seed,
  };
}

/** Whether nothing was typed yet. */
export function isUntouched(draft: PlanDraft): boolean {
  return JSON.stringify({ ...newPlan(draft.measures, draft.start, draft.seed) }) === JSON.stringify(draft);
}

/** A kept draft, or null when it is none that this version reads. */
export function keptPlan(body: unknown): PlanDraft | null {
  const read = planDraft.safeParse(body);
  return read.success ? read.data : null;
}
