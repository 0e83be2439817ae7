import type { BaseAlcohol } from '#core/ferment/base-alcohol.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import type { JarScience } from './sheet-words.ts';

/** One line of how the figures are reckoned, with what it rests on. */
export interface Reckoning {
  readonly what: string;
  readonly basis: string;
}

const roomFrom = {
  plan: phrase`as planned`,
  base: phrase`as its base stood`,
  usual: phrase`since nobody said`,
} as const;

function baseAlcoholWords(alcohol: BaseAlcohol | null): string {
  if (alcohol === null) return phrase`alcohol not known and counted as none`;
  return alcohol.from === 'given'
    ? phrase`alcohol ${alcohol.pctVol} % vol`
    : phrase`alcohol up to ${fixed(alcohol.pctVol, 1)} % vol, were all the sugar that is gone since its start alcohol`;
}

/** How a jar's sheet is reckoned, line by line. */
export function reckoningOf({ sheet, base, room, closing, cold }: JarScience, measures: Measures): Reckoning[] {
  if (sheet === null) return [];
  const sugar = base?.sugar ?? null;
  return [
    ...(base === null
      ? []
      : [
          {
            what:
              sugar === null
                ? phrase`Base “${base.name}”: its sugar is not known.`
                : sugar.from === 'now'
                  ? phrase`Base “${base.name}”: ${measures.sugar(sugar.g_per_L)} as last given, ${baseAlcoholWords(base.alcohol)}.`
                  : phrase`Base “${base.name}”: ${measures.sugar(sugar.g_per_L)} as it was started; what has fermented since is still counted, ${baseAlcoholWords(base.alcohol)}.`,
            basis: phrase`As written down under Bases`,
          },
        ]),
    {
      what: phrase`Volume: the base, and what is added by its density at ${measures.temperature(20)}.`,
      basis: phrase`Choi and Okos (1986), within 1 %; frozen fruit takes more room until it thaws`,
    },
    {
      what: phrase`Sugar: the food table’s figure for each ingredient; a real fruit may hold a fifth more or less. °Bx and SG as if all were sucrose in water.`,
      basis: phrase`USDA SR28; ICUMSA SPS-4 density of sucrose solutions`,
    },
    {
      what: phrase`Alcohol: all sugar to alcohol and gas, which is a bound; and yeast’s own yield, since it builds itself from sugar too.`,
      basis: phrase`Gay-Lussac’s equation; Balling’s balance. The line of ${0.5} % vol: 27 CFR parts 16 and 25 (TTB), at any time`,
    },
    ...(closing === null
      ? []
      : [
          {
            what: phrase`Pressure: all sugar left at closing becomes CO₂, shared by drink and headspace, at the room’s temperature and at ${measures.temperature(35)}. A bound: seals leak and bacteria make less gas.`,
            basis: phrase`Solubility of CO₂ by Weiss (1974), 3 % of the absolute pressure; ${measures.temperature(35)} for a warm day is common practice, no source`,
          },
        ]),
    ...(cold === null
      ? []
      : [
          {
            what: phrase`Cold start: heat balance of base and frozen fruit, Newton’s law of warming, and how yeast answers to temperature. Stirring, draughts and the ferment’s own warmth are left out.`,
            basis: phrase`Choi and Okos (1986); ASHRAE freezing points; Rosso et al. (1993); Salvadó et al. (2011)`,
          },
        ]),
    {
      what: phrase`The room: ${measures.temperature(room.temperature_C)}, ${roomFrom[room.from]}.`,
      basis: room.from === 'usual' ? phrase`Common practice, no source` : phrase`As written down`,
    },
  ];
}
