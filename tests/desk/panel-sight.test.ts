import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';

function choose(n: number, k: number): number {
  let product = 1;
  for (let step = 1; step <= k; step += 1) product = (product * (n - k + step)) / step;
  return product;
}

/** The binomial summed term by term: another road than the program's. */
function upperTail(least: number, n: number, chance: number): number {
  let sum = 0;
  for (let k = least; k <= n; k += 1) sum += choose(n, k) * chance ** k * (1 - chance) ** (n - k);
  return sum;
}

describe('panel:sight', () => {
  it('agrees with panel:design at the gap that shows, climbs, and starts at the chance of a false find', async () => {
    const { ask } = await temporaryDesk();
    const plan = { tasters: 6, errorSd: 1.8 };
    const sight = await ask('panel:sight', { samples: 4, ...plan, differences: [2] });
    const detectable = sight.detectableDifference ?? 0;
    const design = await ask('panel:design', { samples: ['a', 'b', 'c', 'd'], ...plan, difference: 2, seed: 1 });
    expect(detectable).toBeCloseTo(design.detectableDifference ?? 0, 9);
    expect(sight.tastersNeededFor).toEqual([{ difference: 2, tasters: design.tastersNeeded }]);
    expect(sight.curve).toHaveLength(41);
    expect(sight.curve[0]).toEqual({ difference: 0, power: expect.closeTo(0.05, 9) });
    expect(sight.curve.at(-1)?.difference).toBe(8);
    const powers = sight.curve.map(({ power }) => power);
    expect(powers).toEqual([...powers].sort((one, other) => one - other));
    const at = sight.curve
      .filter(({ difference }) => Math.abs(difference - detectable) < 0.2)
      .map(({ power }) => power);
    expect(Math.min(...at)).toBeLessThan(0.8);
    expect(Math.max(...at)).toBeGreaterThan(0.8);
  });

  it('says for one taster, and for a gap too fine, why there is no figure', async () => {
    const { ask } = await temporaryDesk();
    const alone = await ask('panel:sight', { samples: 3, tasters: 1, errorSd: 1.8, differences: [0.01] });
    expect(alone).toMatchObject({ curve: [], detectableDifference: null });
    expect(alone.tastersNeededFor).toEqual([{ difference: 0.01, tasters: null }]);
    expect(alone.reasons.map(({ path, code }) => [path.join('.'), code])).toEqual([
      ['curve', 'one-taster'],
      ['detectableDifference', 'one-taster'],
      ['tastersNeededFor.0.tasters', 'too-few-scores'],
    ]);
  });

  it('answers at once: fifty panels take less than two seconds of the processor’s time', async () => {
    const { ask } = await temporaryDesk();
    const begun = process.cpuUsage();
    for (let tasters = 2; tasters < 52; tasters += 1) await ask('panel:sight', { samples: 5, tasters, errorSd: 1.8 });
    const { user, system } = process.cpuUsage(begun);
    expect((user + system) / 1000).toBeLessThan(2000);
  });
});

describe('panel:discriminationDesign', () => {
  it('asks for the right answers that ISO 4120, ISO 10399 and ISO 5495 ask for at 5 %', async () => {
    const { ask } = await temporaryDesk();
    const minimum = async (method: 'triangle' | 'duo-trio' | 'paired' | 'paired-two-sided', trials: number) =>
      (await ask('panel:discriminationDesign', { method, trials })).minimumCorrect;
    expect(await minimum('triangle', 12)).toBe(8);
    expect(await minimum('triangle', 30)).toBe(15);
    expect(await minimum('duo-trio', 24)).toBe(17);
    expect(await minimum('paired', 24)).toBe(17);
    expect(await minimum('paired-two-sided', 24)).toBe(18);
  });

  it('tells the chance to find each size, as a binomial summed by hand', async () => {
    const { ask } = await temporaryDesk();
    const design = await ask('panel:discriminationDesign', { method: 'triangle', trials: 18 });
    expect(design).toMatchObject({ minimumCorrect: 10, expectedByGuessing: 6, fewestTrials: 3 });
    expect(design.chances.map(({ dPrime }) => dPrime)).toEqual([1, 1.5, 2]);
    for (const { right, power } of design.chances) expect(power).toBeCloseTo(upperTail(10, 18, right), 10);
    // Ennis, Journal of Sensory Studies 8 (1993) 353, triangle: 0.418 right at d′ 1 and 0.605 at d′ 2 (from memory).
    const [slight, , large] = design.chances;
    expect([slight?.right.toFixed(3), large?.right.toFixed(3)]).toEqual(['0.418', '0.605']);
  });

  it('says that two answers can show nothing, and how many could', async () => {
    const { ask } = await temporaryDesk();
    const design = await ask('panel:discriminationDesign', { method: 'paired-two-sided', trials: 2 });
    expect(design).toMatchObject({ minimumCorrect: null, fewestTrials: 6 });
    expect(design.reasons).toEqual([
      { path: ['minimumCorrect'], code: 'too-few-scores', needs: expect.stringContaining('at least 6') },
    ]);
    for (const { power } of design.chances) expect(power).toBe(0);
  });
});
