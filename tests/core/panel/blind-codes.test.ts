import { describe, expect, it } from 'vitest';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { blindCodes, usableBlindCodes } from '#core/panel/serving/blind-codes.ts';
import { designPanel } from '#core/panel/serving/panel-design.ts';
import { panelPower } from '#core/panel/serving/panel-power.ts';
import { panelRequests } from '#shared/contract/panel.ts';

describe('blindCodes', () => {
  it('never draws a code that tells something', () => {
    for (const code of ['100', '111', '123', '321', '999', '200', '122', '121', '234', '987', '450']) {
      expect(usableBlindCodes).not.toContain(code);
    }
    expect(usableBlindCodes.every((code) => /^[1-9]\d[1-9]$/.test(code) && new Set(code).size === 3)).toBe(true);
    expect(usableBlindCodes.length).toBeGreaterThan(500);
  });

  it('draws different codes, none in use, the same for the same seed', () => {
    const inUse = blindCodes(300, { seed: 1 });
    const fresh = blindCodes(200, { seed: 2, inUse });
    expect(new Set([...inUse, ...fresh]).size).toBe(500);
    expect(blindCodes(200, { seed: 2, inUse })).toEqual(fresh);
    expect(blindCodes(200, { seed: 3, inUse })).not.toEqual(fresh);
  });

  it('takes codes never used first, then those used longest ago', () => {
    const lastUsed = Object.fromEntries(usableBlindCodes.slice(2).map((code, index) => [code, 1000 - index]));
    const drawn = blindCodes(4, { seed: 9, lastUsed });
    expect(new Set(drawn.slice(0, 2))).toEqual(new Set(usableBlindCodes.slice(0, 2)));
    expect(drawn.slice(2)).toEqual(usableBlindCodes.slice(-2).reverse());
  });

  it('throws when more are wanted than are free', () => {
    expect(() => blindCodes(1, { seed: 1, inUse: usableBlindCodes })).toThrow(OutOfDomain);
  });
});

describe('designPanel', () => {
  const input = { samples: ['a', 'b', 'c'], tasters: 10, replicates: 2, errorSd: 1.2, difference: 1.5, seed: 4 };

  it('has the contract’s shape, with power, difference and panel that agree with each other', () => {
    const design = designPanel(input);
    panelRequests['panel:design'].output.parse(design);
    const plan = { samples: 3, tasters: 10, replicates: 2, errorSd: 1.2, alpha: 0.05 };
    expect(panelPower(plan, design.detectableDifference ?? 0)).toBeCloseTo(0.8, 8);
    expect(design.powerAtDifference).toBeCloseTo(panelPower(plan, 1.5), 12);
    const needed = design.tastersNeeded ?? 0;
    expect(panelPower({ ...plan, tasters: needed }, 1.5)).toBeGreaterThanOrEqual(0.8);
    expect(panelPower({ ...plan, tasters: needed - 1 }, 1.5)).toBeLessThan(0.8);
  });

  it('counts place and follows as its own orders have them', () => {
    const { sittings, balance } = designPanel(input);
    const orders = sittings.flatMap((sitting) => sitting.orders);
    expect(orders).toHaveLength(20);
    for (const sample of input.samples) {
      expect(balance.place[sample]).toEqual(
        [0, 1, 2].map((place) => orders.filter((order) => order[place] === sample).length),
      );
      for (const later of input.samples.filter((other) => other !== sample)) {
        const count = orders.filter((order) =>
          order.some((name, place) => name === later && order[place - 1] === sample),
        ).length;
        expect(balance.follows[sample]?.[later]).toBe(count);
      }
    }
  });

  it('with one taster: orders, but no power, and says so', () => {
    const design = designPanel({ ...input, tasters: 1 });
    panelRequests['panel:design'].output.parse(design);
    expect(design).toMatchObject({ detectableDifference: null, powerAtDifference: null });
    expect(design.reasons.map(({ code }) => code)).toEqual(['one-taster', 'one-taster']);
    expect(design.tastersNeeded).toBeGreaterThan(1);
  });

  it('answers odd wishes: a huge or a tiny difference, many samples', () => {
    for (const wish of [
      { difference: 1000, errorSd: 0.001 },
      { difference: 0.001, errorSd: 1000 },
      { power: 0.03 },
      { alpha: 1e-6 },
    ]) {
      expect(() => panelRequests['panel:design'].output.parse(designPanel({ ...input, ...wish }))).not.toThrow();
    }
    const many = Array.from({ length: 24 }, (_, index) => `s${index}`);
    const design = designPanel({ ...input, samples: many, tasters: 12 });
    panelRequests['panel:design'].output.parse(design);
    expect(new Set(Object.values(design.codes)).size).toBe(24);
  });
});
