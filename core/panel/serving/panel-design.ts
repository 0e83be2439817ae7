import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import { blindCodes } from './blind-codes.ts';
import { detectableDifference, panelPower, tastersNeeded } from './panel-power.ts';
import { servingDesign } from './serving-design.ts';

export interface PanelDesignInput {
  readonly samples: readonly string[];
  readonly tasters: number;
  readonly replicates?: number | undefined;
  readonly errorSd: number;
  readonly difference: number;
  readonly alpha?: number | undefined;
  readonly power?: number | undefined;
  readonly seed: number;
}

export interface PanelDesign {
  readonly sittings: { readonly orders: string[][] }[];
  readonly codes: Record<string, string>;
  readonly balance: {
    readonly place: Record<string, number[]>;
    readonly follows: Record<string, Record<string, number>>;
  };
  readonly detectableDifference: number | null;
  readonly powerAtDifference: number | null;
  readonly tastersNeeded: number | null;
  readonly reasons: Reason[];
}

/** Nobody plans a larger panel; a longer search would answer no question. */
const mostTasters = 1_000_000;

/** An object whose keys may be any label, `__proto__` too. */
function record<Value>(entries: readonly (readonly [string, Value])[]): Record<string, Value> {
  return Object.fromEntries(entries);
}

/**
 * Serving orders, blind codes, and what the panel will be able to see.
 *
 * Method: servingDesign, blindCodes, and the power of the F test as panelPower tells it. Each round of replicates is a sitting of
 * its own, and more than seven samples are spread over several; within a sitting, `orders` holds one order a taster.
 * `balance.follows[earlier][later]` counts how often `later` came straight after `earlier`.
 *
 * @param input 2 to 24 different samples; errorSd and difference above 0; replicates 1, alpha 0.05 and power 0.8 unless given
 * @returns the design; what one taster cannot tell is null, with its reason
 * @throws OutOfDomain outside these
 * @example designPanel({ samples: ['3 days', '5 days'], tasters: 6, errorSd: 1.2, difference: 1, seed: 1 }).sittings.length // 1
 */
export function designPanel(input: PanelDesignInput): PanelDesign {
  const { samples, tasters, errorSd, difference, seed } = input;
  const replicates = input.replicates ?? 1;
  const power = input.power ?? 0.8;
  const design = servingDesign(samples.length, tasters, replicates, seed);
  const name = (index: number): string => samples[index] ?? '';
  const codes = blindCodes(samples.length, { seed });
  const plan = { samples: samples.length, tasters, replicates, errorSd, alpha: input.alpha ?? 0.05 };
  const reasons: Reason[] = [];
  if (tasters < 2) {
    const needs = phrase`a second taster: one alone leaves no doubt to measure a difference against`;
    reasons.push({ path: ['detectableDifference'], code: 'one-taster', needs });
    reasons.push({ path: ['powerAtDifference'], code: 'one-taster', needs });
  }
  const detectable = tasters < 2 ? null : power > plan.alpha ? detectableDifference(plan, power) : 0;
  const needed = tastersNeeded(plan, difference, power, mostTasters);
  if (needed === null) {
    reasons.push({
      path: ['tastersNeeded'],
      code: 'too-few-scores',
      needs: phrase`a larger difference or steadier scores: even a million tasters would not find this one`,
    });
  }
  return {
    sittings: design.sittings.map(({ orders }) => ({ orders: orders.map((order) => order.map(name)) })),
    codes: record(samples.map((sample, index) => [sample, codes[index] ?? ''])),
    balance: {
      place: record(samples.map((sample, index) => [sample, design.balance.place[index] ?? []])),
      follows: record(
        samples.map((sample, index) => [
          sample,
          record(
            samples
              .map((other, column): [string, number] => [other, design.balance.follows[index]?.[column] ?? 0])
              .filter(([other]) => other !== sample),
          ),
        ]),
      ),
    },
    detectableDifference: detectable,
    powerAtDifference: tasters < 2 ? null : panelPower(plan, difference),
    tastersNeeded: needed,
    reasons,
  };
}
