import { detectableDifference, panelPower, tastersNeeded } from '#core/panel/serving/panel-power.ts';
import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Computers } from '../handler.ts';

/** Enough points for a smooth line. */
const steps = 40;
/** Nobody sets a larger table for a few jars. */
const mostTasters = 500;

export const panelSightComputers: Computers<'panel:sight'> = {
  'panel:sight'({ samples, tasters, replicates, errorSd, alpha, power, upTo, differences }) {
    const plan = { samples, tasters, replicates, errorSd, alpha };
    const reasons: Reason[] = [];
    const isAlone = tasters < 2;
    if (isAlone) {
      const needs = phrase`a second taster: one alone leaves no doubt to measure a difference against`;
      for (const at of ['curve', 'detectableDifference']) reasons.push({ path: [at], code: 'one-taster', needs });
    }
    const tastersNeededFor = differences.map((difference, place) => {
      const needed = tastersNeeded(plan, difference, power, mostTasters);
      if (needed === null) {
        const needs = phrase`a larger gap or steadier scores: even ${mostTasters} tasters would not find this one`;
        reasons.push({ path: ['tastersNeededFor', place, 'tasters'], code: 'too-few-scores', needs });
      }
      return { difference, tasters: needed };
    });
    return {
      curve: isAlone
        ? []
        : Array.from({ length: steps + 1 }, (_, step) => {
            const difference = (step * upTo) / steps;
            return { difference, power: panelPower(plan, difference) };
          }),
      detectableDifference: isAlone ? null : power > alpha ? detectableDifference(plan, power) : 0,
      tastersNeededFor,
      reasons,
    };
  },
};
