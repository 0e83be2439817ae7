import { acidity } from '#core/ferment/acidity.ts';
import { equivalentHours } from '#core/ferment/equivalent-hours.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { sugarSolution } from '#core/ferment/sugar-solution.ts';
import type { Computers } from '../handler.ts';

export const fermentComputers: Computers<
  'jar:sheet' | 'ferment:convert' | 'ferment:acidity' | 'ferment:equivalentHours'
> = {
  'jar:sheet': (input) => jarSheet(input),
  'ferment:convert'({ brix, sg, sugar_g_per_L = 0, temperature_C }) {
    const strength = brix !== undefined ? { brix } : sg !== undefined ? { sg } : { sugar_g_per_L };
    return sugarSolution(strength, temperature_C);
  },
  'ferment:acidity': (input) => acidity(input),
  'ferment:equivalentHours': ({ log, reference_C }) => equivalentHours(log, reference_C),
};
