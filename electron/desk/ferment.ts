import { acidity } from '#core/ferment/acidity.ts';
import { equivalentHours } from '#core/ferment/equivalent-hours.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { sugarSolution } from '#core/ferment/sugar-solution.ts';
import type { Handlers } from './handler.ts';

export const fermentHandlers: Handlers<
  'jar:sheet' | 'ferment:convert' | 'ferment:acidity' | 'ferment:equivalentHours'
> = {
  'jar:sheet': (_kitchen, input) => jarSheet(input),
  'ferment:convert': (_kitchen, { temperature_C, ...strength }) => sugarSolution(strength, temperature_C),
  'ferment:acidity': (_kitchen, input) => acidity(input),
  'ferment:equivalentHours': (_kitchen, { log, reference_C }) => equivalentHours(log, reference_C),
};
