import { describe, expect, it } from 'vitest';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { preparedTrial } from './example-trial.ts';

const plain = /\bp\s*[=<]|proved|no difference|NaN|undefined|null/i;

/** A ranked tasting of the days trial: `orders` name the days, best first, one line a taster. */
async function rankedTasting(test: TestDesk, orders: readonly string[], close = true) {
  const prepared = await preparedTrial(test, orders.length);
  const { jars, tasters } = prepared;
  const { tasting, codes } = await test.ask('tastings:build', {
    trial: prepared.trial,
    name: 'In order',
    samples: jars.map(({ id }) => ({ jar: id })),
    tasters,
    ranked: true,
    seed: 5,
  });
  const attribute = (await test.ask('tastings:open', { tasting })).attributes[0]?.name ?? '';
  const code = (day: string) => codes[jars.find(({ level }) => level.startsWith(day))?.id ?? ''] ?? '';
  await test.ask('scores:enter', {
    tasting,
    scores: orders.flatMap((order, index) =>
      [...order].map((day, place) => ({
        taster: tasters[index] ?? '',
        sample: code(day),
        attribute,
        score: place + 1,
      })),
    ),
  });
  if (close) await test.ask('tastings:close', { tasting });
  return { ...prepared, tasting };
}

/** A scored tasting with liking and a just-about-right scale for sweetness; `answers` are [day, liking, sweetness]. */
async function rightnessTasting(test: TestDesk, answers: readonly (readonly [string, number | null, number])[][]) {
  const prepared = await preparedTrial(test, answers.length);
  const { tasting, codes } = await test.ask('tastings:build', {
    trial: prepared.trial,
    name: 'Right or not',
    samples: prepared.jars.map(({ id }) => ({ jar: id })),
    tasters: prepared.tasters,
    attributes: [
      { name: 'liking', low: 1, high: 9 },
      { name: 'sweetness', kind: 'just-about-right', low: -2, high: 2 },
    ],
    seed: 5,
  });
  const code = (day: string) => codes[prepared.jars.find(({ level }) => level.startsWith(day))?.id ?? ''] ?? '';
  await test.ask('scores:enter', {
    tasting,
    scores: answers.flatMap((own, index) =>
      own.flatMap(([day, liking, sweetness]) => [
        { taster: prepared.tasters[index] ?? '', sample: code(day), attribute: 'liking', score: liking },
        { taster: prepared.tasters[index] ?? '', sample: code(day), attribute: 'sweetness', score: sweetness },
      ]),
    ),
  });
  await test.ask('tastings:close', { tasting });
  return prepared;
}

describe('findings:places', () => {
  it('tells a clear order of six tasters, with Friedman, Kendall, Page and the critical difference', async () => {
    const test = await temporaryDesk();
    const { trial } = await rankedTasting(test, Array(6).fill('321'));
    const { rankings, scored } = await test.ask('findings:places', { trial });
    expect(scored).toEqual([]);
    const [ranking] = rankings;
    expect(ranking).toMatchObject({ name: 'In order', tasters: 6, counted: 6, withEverybody: null });
    // All six alike: chi-square 2·6 = 12, W = 1; every order equally likely, 6 of 6^6 do as well.
    expect(ranking?.test).toMatchObject({ chiSquare: 12, kendallW: 1, exact: true });
    expect(ranking?.test?.p).toBeCloseTo(6 / 6 ** 6, 12);
    // Page: L = 6·(1·1 + 2·2 + 3·3); once in 6^6.
    expect(ranking?.page).toMatchObject({ l: 84, exact: true });
    expect(ranking?.page?.better).toBeCloseTo(1 / 6 ** 6, 12);
    expect(ranking?.sentence).toBe(
      '“3 days” came first (place 1.0 on average) and “1 day” last (3.0); by 6 rankings “3 days” stands clear of “1 day”.',
    );
    expect(ranking?.ordered).toBe(
      'More days were placed steadily better: luck alone sets so steady an order in fewer than 1 in 1,000 such tastings.',
    );
    expect(ranking?.places.find(({ sample }) => sample === '3 days')).toEqual({
      sample: '3 days',
      counts: [6, 0, 0],
      mean: 1,
    });
  });

  it('says what a torn panel can’t tell, leaves out who is set aside and shows both', async () => {
    const test = await temporaryDesk();
    const { trial, tasters } = await rankedTasting(test, ['321', '123', '213', '132']);
    const before = (await test.ask('findings:places', { trial })).rankings[0];
    expect(before?.sentence).toContain('not enough to set them apart');
    expect(before?.ordered).toContain('neither steadily better nor steadily worse');
    await test.ask('tasters:setAside', { trial, taster: tasters[0] ?? '', reason: 'a cold' });
    const after = (await test.ask('findings:places', { trial })).rankings[0];
    expect(after?.tasters).toBe(3);
    expect(after?.withEverybody).toBe(before?.sentence);
    expect(after?.doubts.join(' ')).toContain('three tasters');
    expect(JSON.stringify([after?.sentence, after?.ordered, after?.doubts])).not.toMatch(plain);
  });

  it('shows nothing before the tasting is closed, and says who can’t be counted', async () => {
    const test = await temporaryDesk();
    const { trial, tasting } = await rankedTasting(test, ['321', '32'], false);
    expect((await test.ask('findings:places', { trial })).rankings).toEqual([]);
    await test.ask('tastings:close', { tasting });
    const [ranking] = (await test.ask('findings:places', { trial })).rankings;
    expect(ranking).toMatchObject({ tasters: 2, counted: 1, test: null });
    expect(ranking?.doubts.join(' ')).toContain('1 of 2 tasters did not place every level');
    expect(ranking?.sentence).not.toMatch(plain);
  });

  it('looks at scores by order alone, the highest first', async () => {
    const test = await temporaryDesk();
    await test.ask('kitchen:sample', {});
    const trial = (await test.ask('trials:list', {})).trials.find(({ factor }) => factor === 'days')?.id ?? '';
    const { scored } = await test.ask('findings:places', { trial });
    const { analysis } = await test.ask('findings:read', { trial });
    for (const { attribute, test: ofPlaces, samples } of scored) {
      const same = analysis?.attributes.find((each) => each.attribute === attribute);
      // Turning every order round changes neither statistic nor chance.
      expect(ofPlaces?.chiSquare).toBeCloseTo(same?.ranks?.chiSquare ?? -1, 9);
      expect(ofPlaces?.p).toBeCloseTo(same?.ranks?.p ?? -1, 9);
      const blocks = ofPlaces?.blocks ?? 0;
      expect(samples.reduce((sum, { rankSum }) => sum + rankSum, 0)).toBeCloseTo((blocks * 4 * 5) / 2, 9);
    }
    const liking = scored.find(({ attribute }) => attribute === 'liking');
    const first = [...(liking?.samples ?? [])].sort((one, other) => one.rankSum - other.rankSum)[0];
    expect(first?.sample).toBe('3 days');
  });
});

describe('findings:penalties', () => {
  it('counts every answer, weighs those with liking beside them, and speaks level by level', async () => {
    const test = await temporaryDesk();
    const { trial } = await rightnessTasting(test, [
      [
        ['1', 4, 2],
        ['2', 8, 0],
        ['3', 6, -1],
      ],
      [
        ['1', 5, 1],
        ['2', 8, 0],
        ['3', 7, 0],
      ],
      [
        ['1', 4, 1],
        ['2', 7, 0],
        ['3', null, -1],
      ],
      [
        ['1', 7, 0],
        ['2', 9, 0],
        ['3', 6, -1],
      ],
    ]);
    const { attributes, rule } = await test.ask('findings:penalties', { trial });
    expect(rule).toContain('common practice, no source');
    const [sweetness] = attributes;
    expect(sweetness?.counts).toEqual({ answers: 12, tooLittle: 3, right: 6, tooMuch: 3 });
    expect(sweetness?.withoutLiking).toBe(1);
    // By hand: right (8, 8, 7, 7, 7, 9) mean 46/6; too much (4, 5, 4) mean 13/3.
    expect(sweetness?.penalties?.tooMuch.drop).toBeCloseTo(46 / 6 - 13 / 3, 12);
    expect(sweetness?.penalties?.tooMuch.share).toBeCloseTo(3 / 11, 12);
    const oneDay = sweetness?.levels.find(({ level }) => level === '1 day');
    expect(oneDay?.counts).toEqual({ answers: 4, tooLittle: 0, right: 1, tooMuch: 3 });
    expect(oneDay?.sentences.join(' ')).toContain('worth changing');
    expect(JSON.stringify(sweetness?.sentences)).not.toMatch(plain);
  });

  it('has nothing to say where no such scale was asked for', async () => {
    const test = await temporaryDesk();
    const { trial } = await preparedTrial(test);
    expect((await test.ask('findings:penalties', { trial })).attributes).toEqual([]);
    expect(await test.fail('findings:penalties', { trial: crypto.randomUUID() })).toMatchObject({ code: 'not-found' });
  });
});

describe('findings:drivers', () => {
  it('says that few jars can’t tell', async () => {
    const test = await temporaryDesk();
    await test.ask('kitchen:sample', {});
    const trial = (await test.ask('trials:list', {})).trials.find(({ factor }) => factor === 'days')?.id ?? '';
    const found = await test.ask('findings:drivers', { trial });
    expect(found.drivers).toEqual([]);
    expect(found.needs).toBe(
      'With four jars it can’t be told what drives liking: whatever happens to differ between them would seem to. It takes five jars or more.',
    );
  });

  it('tells what moved with liking over six jars, and what moved together', async () => {
    const test = await temporaryDesk();
    const levels = [20, 40, 60, 80, 100, 120].map((value) => ({ name: `${value} g`, value }));
    const saved = await test.ask('trials:save', {
      question: 'How much?',
      factor: 'amount',
      levels,
      control: '20 g',
      held: { additions: [{ ingredient: 'raspberries', mass_g: 20, state: 'fresh' }], days: 2 },
      calendar: 'staggered-pull',
      baseAvailable_mL: 6000,
      baseEach_mL: 700,
      vessel: { kind: 'open-jar', capacity_mL: 1000 },
      start: '2026-05-01T08:00:00Z',
      seed: 1,
    });
    const ids = saved.jars.map(({ id }) => id);
    await test.ask('jars:start', { jars: ids, at: '2026-05-01T08:00:00Z' });
    test.clock.move(48);
    await test.ask('jars:pull', { jars: ids });
    const tasters: string[] = [];
    for (const name of ['Ann', 'Bo', 'Cy', 'Di', 'Ed']) {
      tasters.push((await test.ask('tasters:save', { name })).taster);
    }
    const { tasting, codes } = await test.ask('tastings:build', {
      trial: saved.trial,
      name: 'Six jars',
      samples: ids.map((jar) => ({ jar })),
      tasters,
      seed: 3,
    });
    const wobble = [0.5, -0.5, 0, 0.5, -0.5, 0];
    await test.ask('scores:enter', {
      tasting,
      scores: saved.jars.flatMap(({ id }, jar) =>
        tasters.flatMap((taster, who) => {
          const sample = codes[id] ?? '';
          const wave = wobble[(jar + who) % 6] ?? 0;
          return [
            { taster, sample, attribute: 'tang', score: 2 + jar },
            { taster, sample, attribute: 'sweetness', score: 8 - jar },
            { taster, sample, attribute: 'fizz', score: 5 },
            { taster, sample, attribute: 'liking', score: 3 + 0.8 * jar + wave },
          ];
        }),
      ),
    });
    await test.ask('tastings:close', { tasting });
    const found = await test.ask('findings:drivers', { trial: saved.trial });
    expect(found.needs).toBeNull();
    const tang = found.drivers.find(({ attribute }) => attribute === 'tang');
    expect(tang?.slope).toBeGreaterThan(0.5);
    expect(tang?.low ?? 9).toBeLessThanOrEqual(0.8);
    expect(tang?.high ?? 0).toBeGreaterThanOrEqual(0.8);
    expect(tang?.sentence).toMatch(
      /^Each point more of tang went with 0\.\d points more liking \(95 % interval .+\)\.$/,
    );
    expect(found.untold).toEqual([{ attribute: 'fizz', why: 'the scores hardly move, so nothing can move with them' }]);
    expect(found.together).toEqual([
      'Tang and sweetness moved against each other over these jars: what one seems to do to liking, the other may have done.',
    ]);
  });
});
