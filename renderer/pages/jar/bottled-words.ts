import { sparklingLine_bar } from '#core/ferment/pressure-cautions.ts';
import { formatQuantity } from '#core/units/format-quantity.ts';
import { phrase } from '#core/words/phrase.ts';
import { dateWords } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { vesselWords } from '#renderer/format/words.ts';
import type { Fact } from '#renderer/parts/facts/facts.tsx';
import type { JarScience } from './sheet-words.ts';

type Bottled = NonNullable<JarScience['bottled']>;

/** What the jar was filled into, with how much sugar, and what pressure that may come to. */
export function bottledSentence(bottled: Bottled, measures: Measures): string {
  const { bottledAt, count, size_mL, closure, sugar_g_per_L: sugar, gauge_bar, ratedGauge_bar: rated_bar } = bottled;
  const said = (bar: number) => formatQuantity(bar, 'pressure', measures.system);
  const into = phrase`Filled on ${dateWords(bottledAt)} into ${count} × ${measures.volume(size_mL)} (${vesselWords[closure]})`;
  if (sugar === null || gauge_bar === null) {
    return phrase`${into}. Nobody noted how much sugar was left, so its pressure can’t be said.`;
  }
  const most = Math.max(gauge_bar.ambient, gauge_bar.at35);
  const against =
    rated_bar === null
      ? phrase`Nobody has said what pressure the bottles are made for, so any of it is too much to trust`
      : most >= rated_bar
        ? phrase`That is more than the ${said(rated_bar)} the bottles are made for`
        : phrase`The bottles are made for ${said(rated_bar)}`;
  const sparkling =
    most >= sparklingLine_bar ? ` ${phrase`From ${said(sparklingLine_bar)} on a wine counts as sparkling.`}` : '';
  return phrase`${into} with ${measures.sugar(sugar)} of sugar left; if all of it ferments, it could build up ${said(gauge_bar.at35)} on a warm day. ${against}.${sparkling}`;
}

export function bottledFacts({ sugar_g_per_L, gauge_bar, ratedGauge_bar }: Bottled, measures: Measures): Fact[] {
  const said = (bar: number) => formatQuantity(Math.max(0, bar), 'pressure', measures.system);
  return [
    {
      name: phrase`Sugar at closing`,
      value: sugar_g_per_L === null ? phrase`not noted` : measures.sugar(sugar_g_per_L),
    },
    ...(gauge_bar === null
      ? []
      : [
          { name: phrase`Pressure at ${measures.temperature(22)}`, value: phrase`up to ${said(gauge_bar.ambient)}` },
          {
            name: phrase`Pressure at ${measures.temperature(35)}, a warm day`,
            value: phrase`up to ${said(gauge_bar.at35)}`,
          },
        ]),
    { name: phrase`Made for`, value: ratedGauge_bar === null ? phrase`nobody has said` : said(ratedGauge_bar) },
  ];
}
