import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { mouldOfBase } from '#store/rows/entries.ts';
import { findJar, type Jar, readingsOfJar, sightingsOfJar, sipsOfJar, sipsOfTrial } from '#store/rows/jars.ts';
import { takeOut } from '#store/rows/taken-out.ts';
import { levelsOfTrial, vesselOf } from '#store/rows/trials.ts';
import { storedMoment } from '#store/stored-moment.ts';
import type { Columns } from '#store/tables.ts';
import type { Writer } from '#store/writer.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { takeFromStock } from '../pantry/take-from-stock.ts';
import { momentWords } from '../tongue/moment-words.ts';
import { entryPlace, entryTime } from './entry-place.ts';

type Act = 'start' | 'pull' | 'strain' | 'discard';

const from: Readonly<Record<Act, readonly Jar['state'][]>> = {
  start: ['planned'],
  pull: ['fermenting'],
  strain: ['fermenting', 'pulled'],
  discard: ['planned', 'fermenting', 'pulled', 'strained'],
};

const refusals: Readonly<Record<Act, (label: string) => string>> = {
  start: (label) => phrase`Jar ${label} can’t be started: it was started or discarded already.`,
  pull: (label) => phrase`Jar ${label} can’t be pulled: it is not started yet, pulled already or discarded.`,
  strain: (label) => phrase`Jar ${label} can’t be strained: it is not started yet, strained already or discarded.`,
  discard: (label) => phrase`Jar ${label} was discarded already.`,
};

const verbs: Readonly<Record<Act, string>> = {
  get start() {
    return phrase`Start`;
  },
  get pull() {
    return phrase`Pull`;
  },
  get strain() {
    return phrase`Strain`;
  },
  get discard() {
    return phrase`Discard`;
  },
};

function assertMayAct(jar: Jar, act: Act, at: string, position: number): void {
  const path = ['jars', position];
  if (!from[act].includes(jar.state)) {
    throw new Failure('refused', refusals[act](jar.label), path);
  }
  if (jar.startedAt !== null && at < jar.startedAt) {
    throw new Failure(
      'refused',
      phrase`Jar ${jar.label} was started at ${momentWords(jar.startedAt)}; what follows can’t lie before that.`,
      ['at'],
    );
  }
  if (jar.strainedAt !== null && at < jar.strainedAt) {
    throw new Failure(
      'refused',
      phrase`Jar ${jar.label} was strained at ${momentWords(jar.strainedAt)}; what follows can’t lie before that.`,
      ['at'],
    );
  }
  if (jar.pulledAt !== null && at < jar.pulledAt) {
    throw new Failure(
      'refused',
      phrase`Jar ${jar.label} was pulled at ${momentWords(jar.pulledAt)}; what follows can’t lie before that.`,
      ['at'],
    );
  }
}

function act(
  kitchen: Kitchen,
  kind: Act,
  input: { readonly jars: readonly string[]; readonly at?: string | undefined },
  values: (at: string) => Partial<Columns<'jars'>>,
  also: (writer: Writer, jars: readonly Jar[], at: string) => void = () => {},
): ValueOf<'jars:start'> {
  const at = input.at === undefined ? kitchen.now().toISOString() : storedMoment(input.at);
  const jars = input.jars.map((id) => found(findJar(kitchen.read, id), 'jar', 'jars'));
  if (new Set(input.jars).size !== input.jars.length) {
    throw new Failure('invalid-input', phrase`A jar stands twice in the list.`, ['jars']);
  }
  for (const [position, jar] of jars.entries()) assertMayAct(jar, kind, at, position);
  const labels = jars.map(({ label }) => label).join(', ');
  const stock = kitchen.write(
    {
      request: `jars:${kind}`,
      summary: jars.length === 1 ? phrase`${verbs[kind]} jar ${labels}` : phrase`${verbs[kind]} jars ${labels}`,
    },
    (writer) => {
      for (const { id } of jars) writer.update('jars', id, values(at));
      also(writer, jars, at);
      return kind === 'start' ? takeFromStock(kitchen, writer, jars) : [];
    },
  );
  return { jars: input.jars.map((id) => found(findJar(kitchen.read, id), 'jar', 'jars')), stock };
}

function changed({ jars }: ValueOf<'jars:start'>): ValueOf<'jars:pull'> {
  return { jars };
}

export const jarHandlers: Handlers<
  | 'jars:open'
  | 'jars:start'
  | 'jars:pull'
  | 'jars:strain'
  | 'jars:discard'
  | 'readings:log'
  | 'sips:log'
  | 'entries:remove'
  | 'sips:byTrial'
> = {
  'jars:open'(kitchen, { jar: id }) {
    const jar = found(findJar(kitchen.read, id), 'jar', 'jar');
    const trial = found(kitchen.read.row('trials', jar.trial), 'trial', 'jar');
    const level = found(
      levelsOfTrial(kitchen.read, jar.trial).find((each) => each.id === jar.level),
      'level',
      'jar',
    );
    return {
      jar,
      formula: level.formula,
      vessel: vesselOf(trial),
      question: trial.question,
      readings: readingsOfJar(kitchen.read, id),
      sightings: sightingsOfJar(kitchen.read, id),
      sips: sipsOfJar(kitchen.read, id),
      baseMould: trial.base_id === null ? null : mouldOfBase(kitchen.read, trial.base_id),
    };
  },
  'jars:start': (kitchen, input) => act(kitchen, 'start', input, (at) => ({ started_at: at })),
  'jars:pull': (kitchen, input) => changed(act(kitchen, 'pull', input, (at) => ({ pulled_at: at }))),
  'jars:strain': (kitchen, input) => changed(act(kitchen, 'strain', input, (at) => ({ strained_at: at }))),
  'jars:discard'(kitchen, input) {
    const tastings: string[] = [];
    const gone = (at: string) => ({ discarded_at: at, discard_reason: input.reason });
    const done = act(kitchen, 'discard', input, gone, (writer, jars, at) => {
      for (const { id } of jars) tastings.push(...takeOut(writer, id, at, input.reason));
    });
    return { ...changed(done), tastings: [...new Set(tastings)] };
  },
  'readings:log'(kitchen, input) {
    const at = entryTime(kitchen, input.at);
    const place = entryPlace(kitchen, input, at);
    return kitchen.write({ request: 'readings:log', summary: phrase`Log a reading of ${place.words}` }, (writer) => ({
      reading: writer.insert('readings', {
        ...place.columns,
        taken_at: at,
        brix: input.brix ?? null,
        sg: input.sg ?? null,
        ph: input.ph ?? null,
        acidity_g_per_L: input.acidity?.g_per_L ?? null,
        acidity_as: input.acidity?.as ?? null,
        temperature_C: input.temperature_C ?? null,
        note: input.note ?? null,
      }).id,
    }));
  },
  'sips:log'(kitchen, input) {
    const at = entryTime(kitchen, input.at);
    const place = entryPlace(kitchen, input, at);
    if (place.jar?.state === 'discarded') {
      throw new Failure(
        'refused',
        phrase`Jar ${place.jar.label} was discarded (${place.jar.discardReason ?? ''}); don’t taste it.`,
        ['jar'],
      );
    }
    return kitchen.write({ request: 'sips:log', summary: phrase`Log a sip of ${place.words}` }, (writer) => ({
      sip: writer.insert('sips', {
        jar_id: input.jar,
        taken_at: at,
        tang: input.tang ?? null,
        fizz: input.fizz ?? null,
        sweetness: input.sweetness ?? null,
        liking: input.liking ?? null,
        note: input.note ?? null,
      }).id,
    }));
  },
  'entries:remove'(kitchen, { kind, id }) {
    const table = { reading: 'readings', sip: 'sips' } as const;
    found(kitchen.read.row(table[kind], id), kind, 'id');
    return kitchen.write({ request: 'entries:remove', summary: phrase`Take out a mistaken ${kind}` }, (writer) => {
      writer.remove(table[kind], id);
      return { removed: id };
    });
  },
  'sips:byTrial'(kitchen, { trial }) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    return { sips: sipsOfTrial(kitchen.read, trial) };
  },
};
