import { z } from 'zod';
import { factors } from '#core/trial/factor.ts';
import { additionStates } from '#core/trial/formula.ts';
import { calendars } from '#core/trial/plan-input.ts';
import {
  count,
  id,
  line,
  moment,
  name,
  note,
  part,
  remark,
  revision,
  seed,
  temperature_C,
  volume_mL,
} from './fields.ts';
import { addition, additions, cover, formula, vessel } from './formula.ts';
import { baseMould, jar } from './jars.ts';
import { reads, writes } from './request.ts';

const level = z.strictObject({
  name,
  value: z.number().min(-1_000_000).max(1_000_000).optional(),
  additions: additions.optional(),
  state: z.enum(additionStates).optional(),
  days: z.number().min(-1_000_000).max(1_000_000).optional(),
  cover: cover.optional(),
  temperature_C: temperature_C.optional(),
});

const alsoHeld = z.union([remark(400), z.number(), z.boolean()]);

/** Members that the contract does not name are kept as "also held equal", in the maker's own words. */
export const held = z
  .object({
    additions: additions.default([]),
    days: z.number().min(-1_000_000).max(1_000_000).optional(),
    cover: cover.optional(),
    temperature_C: temperature_C.optional(),
    also: z.record(name, alsoHeld).optional(),
  })
  .catchall(z.unknown())
  .transform(({ additions: kept, days, cover: covered, temperature_C: warmth, also, ...rest }, context) => {
    const written = z.record(name, alsoHeld).safeParse(rest);
    for (const { path } of written.error?.issues ?? []) {
      context.addIssue({ code: 'custom', message: 'must be words, a number, or true or false', path: [...path] });
    }
    const whole = { ...also, ...written.data };
    if (Object.keys(whole).length > 40)
      context.addIssue({ code: 'custom', message: 'at most 40 more things can be held' });
    return { additions: kept, days, cover: covered, temperature_C: warmth, also: whole };
  });

const planMembers = {
  question: line(400),
  factor: z.enum(factors),
  levels: z.array(level).min(1).max(24),
  control: name,
  held,
  replicates: count(1, 12).default(1),
  calendar: z.enum(calendars),
  baseAvailable_mL: volume_mL,
  baseEach_mL: volume_mL,
  vessel,
  start: moment,
  seed,
};

export const trialPlanInput = z.strictObject(planMembers);

const plannedJar = z.strictObject({
  label: z.string(),
  level: z.string(),
  replicate: z.int(),
  isControl: z.boolean(),
  start: z.string(),
  pull: z.string(),
  base_mL: z.number(),
  additions: z.array(addition).readonly(),
});

const problem = z.strictObject({
  code: z.string(),
  message: z.string(),
  path: z.array(z.union([z.string(), z.number()])).readonly(),
});

const trialState = z.enum(['planned', 'fermenting', 'pulled', 'closed']);

export const trialSummary = z.strictObject({
  id,
  revision,
  isSample: z.boolean(),
  question: z.string(),
  factor: z.enum(factors),
  startsAt: z.string(),
  endsAt: z.string(),
  state: trialState,
  levels: z.array(z.string()),
  jars: z.int(),
  standing: z.int(),
  tastings: z.int(),
});

export const trialLevel = z.strictObject({
  id,
  name: z.string(),
  value: z.number().nullable(),
  isControl: z.boolean(),
  formula,
});

export const trialWhole = trialSummary.extend({
  calendar: z.enum(calendars),
  base: z.strictObject({ id, name: z.string() }).nullable(),
  baseMould: baseMould.nullable(),
  baseEach_mL: z.number(),
  replicates: z.int(),
  vessel,
  held: z.strictObject({
    additions,
    days: z.number().nullable(),
    cover: cover.nullable(),
    temperature_C: z.number().nullable(),
    also: z.record(z.string(), alsoHeld),
  }),
  seed,
  note: z.string().nullable(),
  levelsWhole: z.array(trialLevel),
  jarsWhole: z.array(jar),
  tastingIds: z.array(id),
});

const trialRef = z.strictObject({ trial: id });

export const trialRequests = {
  /** What a plan comes to: its jars, why it can't work, what to know. Writes nothing. */
  'trials:plan': reads(
    trialPlanInput,
    z.strictObject({
      jars: z.array(plannedJar),
      feasible: z.boolean(),
      problems: z.array(problem),
      notes: z.array(z.strictObject({ code: z.string(), message: z.string() })),
    }),
  ),
  /** Keeps a plan that works; with a base, its jars are allotted from that base. */
  'trials:save': writes(
    z.strictObject({ ...planMembers, base: id.optional(), note: note.optional() }),
    z.strictObject({ trial: id, jars: z.array(z.strictObject({ id, label: z.string(), level: z.string() })) }),
  ),
  /** The newest first. `only: 'awake'`: those with jars that are planned or stand. `more`: there when the list goes on behind its limit. */
  'trials:list': reads(
    z.strictObject({ only: z.enum(['awake']).optional(), ...part }),
    z.strictObject({ trials: z.array(trialSummary), more: z.literal(true).optional() }),
  ),
  'trials:open': reads(trialRef, trialWhole),
  /** What is still to come of a trial as a calendar file (RFC 5545), for a telephone. */
  'trials:calendar': reads(trialRef, z.strictObject({ name: z.string(), text: z.string(), events: z.int() })),
  'trials:annotate': writes(
    trialRef.extend({
      question: planMembers.question.optional(),
      note: note.nullable().optional(),
      revision: revision.optional(),
    }),
    z.strictObject({ trial: id }),
  ),
  'trials:remove': writes(trialRef, z.strictObject({ trial: id })),
} as const;
