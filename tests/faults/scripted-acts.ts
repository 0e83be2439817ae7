import type { Desk } from '#desk/desk.ts';
import { daysPlan } from '#tests/desk/example-trial.ts';
import { onePixelJpeg } from '#tests/desk/small-pictures.ts';

// One round of kitchen work, act by act: what the killed child does, and what the log at file level is recorded from.
// Each act is one request; the numbers of steps and changes after it are the same in every run.

export interface Act {
  readonly name: string;
  readonly input: (known: Known) => unknown;
  /** What later acts need of the answer. */
  readonly learn?: (known: Known, value: Record<string, unknown>) => void;
}

export interface Known {
  taster: string;
  base: string;
  trial: string;
  jars: string[];
  labels: string[];
  other: string;
  tasting: string;
  codes: string[];
  version: string;
  bin: number;
  round: number;
  /** The trial as a file, as another kitchen would take it in. */
  carried: string;
}

const text = (value: unknown) => String(value);

/** A picture of its own for each number: what stands behind a JPEG's end is no part of it, but of the file and of its hash. */
const picture = (number: number) => Buffer.concat([onePixelJpeg, Buffer.from(String(number))]).toString('base64');

const plan = (known: Known) => ({ ...daysPlan, base: known.base, question: `How many days, round ${known.round}?` });
const times = (count: number, act: (at: number) => Act): Act[] => Array.from({ length: count }, (_, at) => act(at));

const acts: readonly Act[] = [
  {
    name: 'tasters:save',
    input: ({ round }) => ({ name: `Newcomer ${round}`, note: 'came by' }),
    learn: (known, { taster }) => {
      known.taster = text(taster);
    },
  },
  { name: 'tasters:save', input: ({ taster, round }) => ({ id: taster, revision: 1, name: `Friend ${round}` }) },
  {
    name: 'bases:start',
    input: ({ round }) => ({ name: `Base ${round}`, volume_mL: 9000, sugarStart_g_per_L: 60 }),
    learn: (known, { base }) => {
      known.base = text(base);
    },
  },
  {
    name: 'trials:save',
    input: plan,
    learn: (known, { trial, jars }) => {
      known.trial = text(trial);
      known.jars = (jars as { id: string }[]).map(({ id }) => id);
      known.labels = (jars as { label: string }[]).map(({ label }) => label);
    },
  },
  { name: 'jars:start', input: ({ jars }) => ({ jars, at: '2026-05-02T08:00:00.000Z' }) },
  ...times(3, (at) => ({
    name: 'readings:log',
    input: ({ jars }) => ({ jar: jars[at], brix: 9 - at, ph: 3.4, at: '2026-05-03T08:00:00.000Z' }),
  })),
  ...times(3, (at) => ({
    name: 'photos:add',
    input: ({ jars, round }) => ({ jar: jars[at], image: picture(round * 10 + at), note: `day ${at}` }),
  })),
  { name: 'photos:add', input: ({ base, round }) => ({ base, image: picture(round * 10) }) },
  {
    name: 'readings:import',
    input: ({ trial, labels }) => ({
      trial,
      table: `jar,hours,brix,ph\n${labels.map((label, at) => `${label},${20 + at},8.1,3.5`).join('\n')}\n`,
    }),
  },
  { name: 'sips:log', input: ({ jars }) => ({ jar: jars[1], tang: 4, fizz: 3, note: 'lively' }) },
  { name: 'drafts:keep', input: ({ round }) => ({ name: 'sheet', body: { round, half: 'a thought' } }) },
  { name: 'jars:pull', input: ({ jars }) => ({ jars }) },
  {
    name: 'tastings:build',
    input: ({ trial, jars, taster, round }) => ({
      trial,
      name: `Tasting ${round}`,
      samples: jars.map((jar) => ({ jar })),
      tasters: [taster],
      seed: round,
    }),
    learn: (known, { tasting, codes }) => {
      known.tasting = text(tasting);
      known.codes = Object.values(codes as Record<string, string>);
    },
  },
  ...times(4, (at) => ({
    name: 'scores:enter',
    input: ({ tasting, codes, round }) => ({
      tasting,
      scores: codes.map((sample) => ({ taster: `Friend ${round}`, sample, attribute: 'tang', score: at + 1 })),
    }),
  })),
  { name: 'undo:last', input: () => ({}) },
  { name: 'redo:last', input: () => ({}) },
  {
    name: 'scores:import',
    input: ({ tasting, codes, round }) => ({
      tasting,
      table: `taster,sample,fizz,sweetness,liking\n${codes.map((code) => `Friend ${round},${code},5,6,7`).join('\n')}\n`,
    }),
  },
  {
    name: 'remarks:save',
    input: ({ tasting, codes, round }) => ({
      tasting,
      taster: `Friend ${round}`,
      sample: codes[0],
      words: 'like a hedge in May',
    }),
  },
  { name: 'tastings:close', input: ({ tasting }) => ({ tasting }) },
  {
    name: 'recipes:promote',
    input: ({ trial, round }) => ({ trial, level: '2 days', name: `House ${round}` }),
    learn: (known, { version }) => {
      known.version = text(version);
    },
  },
  {
    name: 'trials:save',
    input: (known) => ({ ...plan(known), question: `Another, round ${known.round}?` }),
    learn: (known, { trial }) => {
      known.other = text(trial);
    },
  },
  { name: 'trials:remove', input: ({ other }) => ({ trial: other }) },
  {
    name: 'bin:list',
    input: () => ({}),
    learn: (known, { entries }) => {
      known.bin = (entries as { step: number }[])[0]?.step ?? 0;
    },
  },
  { name: 'bin:restore', input: ({ bin }) => ({ step: bin }) },
  {
    name: 'data:trialFile',
    input: ({ other }) => ({ trial: other }),
    learn: (known, { text: whole }) => {
      known.carried = text(whole);
    },
  },
  { name: 'trials:remove', input: ({ other }) => ({ trial: other }) },
  { name: 'data:takeIn', input: ({ carried }) => ({ text: carried }) },
  { name: 'pantry:stock', input: ({ round }) => ({ name: 'raspberries', onHand_g: 1000 + round }) },
  { name: 'store:backup', input: () => ({}) },
  { name: 'tasters:erase', input: ({ taster }) => ({ taster }) },
  { name: 'kitchen:change', input: ({ round }) => ({ name: `Kitchen ${round}` }) },
];

export const actsInRound = acts.length;

export function actName(index: number): string {
  return acts[index % acts.length]?.name ?? '';
}

export function newKnown(): Known {
  return {
    taster: '',
    base: '',
    trial: '',
    jars: [],
    labels: [],
    other: '',
    tasting: '',
    codes: [],
    version: '',
    bin: 0,
    round: 0,
    carried: '',
  };
}

/** Does the act of that number; rounds go on without an end. A refusal is a mistake of the script and thrown. */
export async function doAct(desk: Desk, known: Known, index: number): Promise<void> {
  const act = acts[index % acts.length];
  if (act === undefined) throw new Error('There is no such act.');
  known.round = Math.floor(index / acts.length) + 1;
  const envelope = await desk.handle(act.name, act.input(known));
  if (!envelope.ok) throw new Error(`${act.name}: ${envelope.error.code} ${envelope.error.message}`);
  act.learn?.(known, envelope.value as Record<string, unknown>);
}
