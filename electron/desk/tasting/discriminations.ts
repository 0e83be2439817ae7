import { cupsToChoose, isRight, servedCups } from '#core/panel/apart/cups.ts';
import { discriminate } from '#core/panel/apart/discriminate.ts';
import { presentationOrders } from '#core/panel/apart/presentation-orders.ts';
import { guessing } from '#core/panel/apart/thurstone.ts';
import { blindCodes, usableBlindCodes } from '#core/panel/serving/blind-codes.ts';
import { discriminationSentence } from '#core/trial/discrimination-sentence.ts';
import { phrase } from '#core/words/phrase.ts';
import type { InputOf, ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import {
  findDiscrimination,
  listDiscriminations,
  openCupCodes,
  type Presentation,
  presentationsOf,
} from '#store/rows/discriminations.ts';
import { findJar, type Jar } from '#store/rows/jars.ts';
import { blindCodeUse } from '#store/rows/tastings.ts';
import { storedMoment } from '#store/stored-moment.ts';
import type { Row } from '#store/tables.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { tastingWarnings } from './tasting-warnings.ts';

type Method = InputOf<'discriminations:build'>['method'];
type Result = NonNullable<ValueOf<'discriminations:open'>['result']>;

/** Three-digit codes run out: one test takes so many at most, and never more than half of those that are free. */
const mostCodes = 120;

function jarToServe(kitchen: Kitchen, id: string, field: string): Jar {
  const jar = found(findJar(kitchen.read, id), 'jar', field);
  if (jar.state === 'discarded' || jar.state === 'planned') {
    const why =
      jar.state === 'planned' ? phrase`has not been started` : phrase`was discarded (${jar.discardReason ?? ''})`;
    throw new Failure('refused', phrase`Jar ${jar.label} ${why}; it can’t be served.`, [field]);
  }
  return jar;
}

function build(kitchen: Kitchen, input: InputOf<'discriminations:build'>): { discrimination: string } {
  if (input.trial !== undefined) found(kitchen.read.row('trials', input.trial), 'trial', 'trial');
  jarToServe(kitchen, input.jarA, 'jarA');
  jarToServe(kitchen, input.jarB, 'jarB');
  input.tasters.forEach((taster, position) => {
    if (kitchen.read.row('tasters', taster) === undefined) {
      throw new Failure('not-found', phrase`There is no such taster in this kitchen.`, ['tasters', position]);
    }
    if (input.tasters.indexOf(taster) !== position) {
      throw new Failure('invalid-input', phrase`The same taster stands twice in the list.`, ['tasters', position]);
    }
  });
  const orders = presentationOrders(input.method, input.tasters.length * input.rounds, input.seed);
  const { inUse, lastUsed } = blindCodeUse(kitchen.read);
  // A code for each cup, so that one which strays finds its tray; a large test uses its codes again. On a tray they always differ.
  const cups = cupsToChoose(input.method);
  const taken = [...inUse, ...openCupCodes(kitchen.read)];
  const free = usableBlindCodes.length - new Set(taken).size;
  const count = Math.min(orders.length * cups, mostCodes, Math.max(6, Math.floor(free / 2)));
  const codes = blindCodes(count, { seed: input.seed, inUse: taken, lastUsed });
  return kitchen.write(
    { request: 'discriminations:build', summary: phrase`Set up the test “${input.name}”` },
    (writer) => {
      const row = writer.insert('discriminations', {
        trial_id: input.trial ?? null,
        name: input.name,
        method: input.method,
        asked: input.asked ?? null,
        expected: input.expected ?? null,
        jar_a_id: input.jarA,
        jar_b_id: input.jarB,
        held_at: input.heldAt === undefined ? writer.now : storedMoment(input.heldAt),
        seed: input.seed,
        closed_at: null,
      });
      orders.forEach((order, index) => {
        writer.insert('presentations', {
          discrimination_id: row.id,
          taster_id: input.tasters[index % input.tasters.length] ?? '',
          round: Math.floor(index / input.tasters.length) + 1,
          cups: order,
          codes: JSON.stringify(
            Array.from({ length: cups }, (_, cup) => codes[(index * cups + cup) % codes.length] ?? ''),
          ),
          chosen: null,
        });
      });
      return { discrimination: row.id };
    },
  );
}

function resultOf(
  row: Row<'discriminations'>,
  list: readonly Presentation[],
  labels: { A: string; B: string },
): Result | null {
  const method = row.method as Method;
  const expected = row.expected as 'A' | 'B' | null;
  const answered = list.filter(({ chosen }) => chosen !== null);
  const trials = answered.length;
  if (trials === 0) return null;
  const right = answered.filter(({ cups, chosen }) => isRight(method, cups, chosen ?? 0, expected)).length;
  const isTwoSided = method === 'paired-two-sided';
  const correct = isTwoSided ? Math.max(right, trials - right) : right;
  const { reasons: _, ...judged } = discriminate({ method, correct, trials });
  const expectedByGuessing = trials * guessing(method);
  const tasters = new Set(answered.map(({ taster_id }) => taster_id)).size;
  const moreChosen = right * 2 === trials ? null : right * 2 > trials ? labels.A : labels.B;
  const chosenJar = isTwoSided ? moreChosen : expected === null ? null : labels[expected];
  const sentence = discriminationSentence({
    method,
    correct,
    trials,
    tasters,
    expectedByGuessing,
    ...judged,
    asked: row.asked,
    chosenJar,
  });
  return { correct, trials, tasters, expectedByGuessing, ...judged, sentence };
}

/** A jar of the test that was thrown away ends it; which of the two it was stays untold while the test is open. */
function goneWarning(kitchen: Kitchen, jars: readonly string[]): string | null {
  const gone = jars.flatMap((jar) => findJar(kitchen.read, jar) ?? []).find(({ state }) => state === 'discarded');
  return gone === undefined
    ? null
    : phrase`One of the two jars was discarded (${gone.discardReason ?? ''}): take the cups away, and taste nothing more of it. No answer is taken any more.`;
}

function warningsFor(kitchen: Kitchen, tasters: readonly string[], jars: readonly string[]): string[] {
  const gone = goneWarning(kitchen, jars);
  return [...(gone === null ? [] : [gone]), ...[...tastingWarnings(kitchen, tasters, jars).values()].flat()];
}

function open(kitchen: Kitchen, id: string): ValueOf<'discriminations:open'> {
  const { summary, row } = found(findDiscrimination(kitchen.read, id), 'test', 'discrimination');
  const list = presentationsOf(kitchen.read, id);
  const isOpen = row.closed_at === null;
  const jarOf = (jar: string) => {
    const whole = found(findJar(kitchen.read, jar), 'jar', 'discrimination');
    return { id: whole.id, label: whole.label, level: whole.levelName };
  };
  const [jarA, jarB] = [jarOf(row.jar_a_id), jarOf(row.jar_b_id)];
  return {
    ...summary,
    asked: row.asked,
    expected: isOpen ? null : (row.expected as 'A' | 'B' | null),
    jarA: isOpen ? null : jarA,
    jarB: isOpen ? null : jarB,
    list: list.map(({ taster_id, tasterName, round, cups, codes, chosen }) => ({
      taster: taster_id,
      tasterName,
      round,
      codes: JSON.parse(codes) as string[],
      chosen,
      cups: isOpen ? null : cups,
      chosenJar: isOpen || chosen === null ? null : servedCups(cups)[chosen - 1] === 'A' ? jarA.label : jarB.label,
      isRight:
        isOpen || chosen === null || summary.method === 'paired-two-sided'
          ? null
          : isRight(summary.method, cups, chosen, row.expected as 'A' | 'B' | null),
    })),
    warnings: isOpen ? warningsFor(kitchen, [...new Set(list.map((each) => each.taster_id))], [jarA.id, jarB.id]) : [],
    result: isOpen ? null : resultOf(row, list, { A: jarA.label, B: jarB.label }),
  };
}

function openTest(kitchen: Kitchen, id: string): Row<'discriminations'> {
  const row = found(kitchen.read.row('discriminations', id), 'test', 'discrimination');
  if (row.closed_at !== null) {
    throw new Failure('refused', phrase`“${row.name}” is closed: the cups have been seen.`, ['discrimination']);
  }
  return row;
}

export const discriminationHandlers: Handlers<
  | 'discriminations:build'
  | 'discriminations:list'
  | 'discriminations:open'
  | 'discriminations:pour'
  | 'discriminations:answer'
  | 'discriminations:close'
  | 'discriminations:remove'
> = {
  'discriminations:build': build,
  'discriminations:list': (kitchen) => ({ discriminations: listDiscriminations(kitchen.read) }),
  'discriminations:open': (kitchen, { discrimination }) => open(kitchen, discrimination),
  'discriminations:pour'(kitchen, { discrimination }) {
    const row = found(kitchen.read.row('discriminations', discrimination), 'test', 'discrimination');
    const label = (jar: string) => findJar(kitchen.read, jar)?.label ?? '';
    return {
      jarA: label(row.jar_a_id),
      jarB: label(row.jar_b_id),
      list: presentationsOf(kitchen.read, discrimination).map(({ tasterName, round, cups, codes }) => ({
        tasterName,
        round,
        cups,
        codes: JSON.parse(codes) as string[],
      })),
    };
  },
  'discriminations:answer'(kitchen, input) {
    const row = openTest(kitchen, input.discrimination);
    const gone = input.chosen === null ? null : goneWarning(kitchen, [row.jar_a_id, row.jar_b_id]);
    if (gone !== null) throw new Failure('refused', gone, ['discrimination']);
    const method = row.method as Method;
    const list = presentationsOf(kitchen.read, row.id);
    const own = found(
      list.find(({ taster_id, round }) => taster_id === input.taster && round === input.round),
      'round of this taster',
      'round',
    );
    if (input.chosen !== null && input.chosen > cupsToChoose(method)) {
      throw new Failure(
        'invalid-input',
        phrase`There are ${cupsToChoose(method)} cups to choose from; ${input.chosen} is outside.`,
        ['chosen'],
      );
    }
    kitchen.write({ request: 'discriminations:answer', summary: phrase`Note ${own.tasterName}’s choice` }, (writer) =>
      writer.update('presentations', own.id, { chosen: input.chosen }),
    );
    return { answered: presentationsOf(kitchen.read, row.id).filter(({ chosen }) => chosen !== null).length };
  },
  'discriminations:close'(kitchen, { discrimination }) {
    const row = openTest(kitchen, discrimination);
    return kitchen.write(
      {
        request: 'discriminations:close',
        summary: phrase`Close the test “${row.name}” and reveal its cups`,
        fixedBecause: phrase`the cups have been seen, and nobody can taste blind again.`,
      },
      (writer) => {
        writer.update('discriminations', discrimination, { closed_at: writer.now });
        return { discrimination };
      },
    );
  },
  'discriminations:remove'(kitchen, { discrimination }) {
    const row = found(kitchen.read.row('discriminations', discrimination), 'test', 'discrimination');
    return kitchen.write(
      { request: 'discriminations:remove', summary: phrase`Remove the test “${row.name}”` },
      (writer) => {
        writer.remove('discriminations', discrimination);
        return { discrimination };
      },
    );
  },
};
