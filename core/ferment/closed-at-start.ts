import type { JarInput, JarVessel } from './jar-input.ts';
import { jarSheet } from './jar-sheet.ts';

/** Whether vessel and cover keep the gas in: cloth and an airlock let it out, and so does an open jar. */
export function keepsGas(vessel: JarVessel, cover: string | null): boolean {
  return vessel.kind !== 'open-jar' && cover !== 'cloth' && cover !== 'airlock';
}

/**
 * The same jar closed with all the sugar it starts with, where its vessel and cover keep the gas in: the most that could build up.
 *
 * @param input a jar without a problem (`jarProblem` returns null)
 * @returns the jar as it is where it is not closed, or its sugar is not known
 */
export function closedAtStart(input: JarInput, cover: string | null): JarInput {
  if (input.sealedWithSugar_g_per_L !== undefined || !keepsGas(input.vessel, cover)) return input;
  const total = jarSheet(input).sugar.total_g_per_L;
  return total === null ? input : { ...input, sealedWithSugar_g_per_L: total };
}
