import { sparklingLine_bar } from '#core/ferment/pressure-cautions.ts';
import { formatQuantity } from '#core/units/format-quantity.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { hoursWords } from '#renderer/parts/course/course-sentences.ts';
import type { Fact } from '#renderer/parts/facts/facts.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';

// A jar's sheet in words: a sentence a cook understands, then the figures with their doubt, then how they are reckoned.

export type JarScience = ValueOf<'sheets:ofJar'>;
export type Sheet = NonNullable<JarScience['sheet']>;

/** A real fruit's sugar against the food table's. Common practice, no source. */
const fruitDoubt = 0.2;
/** Volumes from composition. */
const volumeDoubt = 0.01;
/** The absolute pressure of the bound. */
const pressureDoubt = 0.03;
const air_bar = 1.01325;

const unknown = phrase`not known`;

function between(low: string, high: string): string {
  return low === high ? '' : phrase` (${low} to ${high})`;
}

/** How full the jar is and how sweet it starts. */
export function sheetSentence({ sheet, base }: JarScience, measures: Measures): string | null {
  if (sheet === null) return null;
  const { volume_mL, fillFraction, headspace_mL, sugar } = sheet;
  const full =
    headspace_mL < 0
      ? phrase`With its fruit in, the jar would run over: ${measures.volume(volume_mL)} in a jar of ${measures.volume(volume_mL + headspace_mL)}.`
      : phrase`With its fruit in, the jar is ${Math.round(fillFraction * 100)} % full: ${measures.volume(volume_mL)}, with room for ${measures.volume(headspace_mL)} above.`;
  const sweet =
    sugar.total_g_per_L === null
      ? base === null
        ? phrase`How sweet it starts is not known: the plan names no base.`
        : phrase`How sweet it starts is not known.`
      : phrase`It starts with ${measures.sugar(sugar.total_g_per_L)} of sugar, about ${sugar.brix === null ? '' : fixed(sugar.brix, 1)} °Bx.`;
  return `${full} ${sweet}`;
}

/** What is missing and where to give it; null when nothing is. */
export function sheetLack({ sheet, base }: JarScience): { words: string; to: string; link: string } | null {
  if (sheet === null || sheet.reasons.length === 0) return null;
  const codes = sheet.reasons.map(({ code }) => code);
  if (codes.includes('base-sugar-unknown')) {
    return base === null
      ? {
          words: phrase`An unknown sugar is never counted as none. Start the base under Bases with its sugar, and choose it when the trial is planned again.`,
          to: '/bases',
          link: phrase`Go to the bases`,
        }
      : {
          words: phrase`How much sugar does “${base.name}” hold? An unknown sugar is never counted as none. Give what it started with, or what is left.`,
          to: `/bases/${base.id}`,
          link: phrase`Give the base’s sugar`,
        };
  }
  const composition = sheet.reasons.find(({ code }) => code === 'composition-unknown');
  return composition === undefined
    ? null
    : {
        words: phrase`Asked for: ${composition.needs} An unknown sugar is never counted as none.`,
        to: '/pantry',
        link: phrase`Give it in the pantry`,
      };
}

/** Volume and sugar with their doubt. */
export function sugarFacts({ sheet }: { readonly sheet: Sheet }, measures: Measures): Fact[] {
  const { volume_mL, headspace_mL, fillFraction, sugar } = sheet;
  const { added_g, total_g_per_L, brix, sg } = sugar;
  const unsure_g_per_L = added_g === null ? 0 : (fruitDoubt * added_g * 1000) / volume_mL;
  return [
    {
      name: phrase`Volume with the fruit`,
      value: `${measures.volume(volume_mL)} ± ${measures.volume(volume_mL * volumeDoubt)}`,
    },
    { name: phrase`Full`, value: `${Math.round(fillFraction * 100)} %` },
    {
      name: phrase`Headspace`,
      value:
        headspace_mL < 0 ? phrase`none: ${measures.volume(-headspace_mL)} too much` : measures.volume(headspace_mL),
    },
    {
      name: phrase`Sugar brought by what is added`,
      value:
        added_g === null
          ? unknown
          : `${measures.mass(added_g)}${between(measures.mass(added_g * (1 - fruitDoubt)), measures.mass(added_g * (1 + fruitDoubt)))}`,
    },
    {
      name: phrase`Sugar in the jar`,
      value:
        total_g_per_L === null
          ? unknown
          : `${measures.sugar(total_g_per_L)}${between(measures.sugar(total_g_per_L - unsure_g_per_L), measures.sugar(total_g_per_L + unsure_g_per_L))}`,
    },
    {
      name: phrase`As a reading`,
      value: brix === null || sg === null ? unknown : phrase`about ${fixed(brix, 1)} °Bx, SG ${fixed(sg, 3)}`,
    },
  ];
}

/** What alcohol there could be, as a sentence that promises nothing. */
export function alcoholSentence({ sheet, base }: JarScience): string {
  const most = sheet?.alcohol.ifAllSugar_pctVol ?? null;
  if (most === null) return phrase`How much alcohol it could reach can’t be said while a sugar is not known.`;
  const held = base?.alcohol ?? null;
  return phrase`Were all its sugar to become alcohol, it would hold ${fixed(most, 1)} % vol, ${
    held === null
      ? phrase`and what the base holds already comes on top: nobody has said how much that is`
      : held.from === 'given'
        ? phrase`with the ${fixed(held.pctVol, 1)} % vol that the base holds already counted in`
        : phrase`with up to ${fixed(held.pctVol, 1)} % vol that the base may hold already counted in: so much its own sugar can have made`
  }. Neither figure below is a forecast: most jars are stopped long before, and bacteria take their share.`;
}

/** Both alcohols, and the sugar left below the line; a base whose alcohol nobody gave is said, not taken as none. */
export function alcoholFacts(
  { sheet, base }: Pick<JarScience, 'base'> & { readonly sheet: Sheet },
  measures: Measures,
): Fact[] {
  const { ifAllSugar_pctVol: most, ifYeastYield_pctVol: yeast, sugarLeftToHalfPercent_g_per_L: left } = sheet.alcohol;
  return [
    {
      name: phrase`If all sugar became alcohol`,
      value: most === null ? unknown : phrase`${fixed(most, 2)} % vol at most`,
    },
    { name: phrase`At yeast’s own yield`, value: yeast === null ? unknown : phrase`${fixed(yeast, 2)} % vol` },
    {
      name: phrase`Sugar that may still ferment below ${0.5} % vol`,
      value:
        left === 0
          ? phrase`none: the base is past it`
          : `${measures.sugar(left)}${base?.alcohol == null ? phrase`, if the base holds no alcohol yet` : ''}`,
    },
  ];
}

/** What closing it would do, in one sentence. */
export function closingSentence(
  { sheet, closing }: JarScience,
  rated_bar: number | undefined,
  measures: Measures,
): string {
  const pressure = sheet?.carbonation?.gauge_bar ?? null;
  if (pressure === null || closing === null) {
    return (
      sheet?.reasons.find(({ path }) => path[0] === 'carbonation')?.needs ??
      phrase`How much pressure can’t be said while its sugar is not known.`
    );
  }
  const most = Math.max(pressure.ambient, pressure.at35);
  const said = (bar: number) => formatQuantity(bar, 'pressure', measures.system);
  const whence = {
    asked: phrase`Closed with ${measures.sugar(closing.sugar_g_per_L)} of sugar left`,
    reading: phrase`Closed with the ${measures.sugar(closing.sugar_g_per_L)} of its last reading`,
    start: phrase`Closed with all the ${measures.sugar(closing.sugar_g_per_L)} it starts with`,
  }[closing.from];
  const against =
    rated_bar === undefined
      ? phrase`Nobody has said what pressure the vessel is made for, so any of it is too much to trust`
      : most >= rated_bar
        ? phrase`That is more than the ${said(rated_bar)} the vessel is made for`
        : phrase`The vessel is made for ${said(rated_bar)}`;
  const sparkling =
    most >= sparklingLine_bar ? phrase` From ${said(sparklingLine_bar)} on a wine counts as sparkling.` : '';
  return phrase`${whence}, it could build up ${said(pressure.at35)} on a warm day. ${against}.${sparkling}`;
}

export function closingFacts({ sheet, room }: JarScience, rated_bar: number | undefined, measures: Measures): Fact[] {
  const carbonation = sheet?.carbonation ?? null;
  if (carbonation === null) return [];
  const said = (bar: number) => formatQuantity(Math.max(0, bar), 'pressure', measures.system);
  const doubtful = (bar: number) => phrase`up to ${said(bar)} ± ${said((bar + air_bar) * pressureDoubt)}`;
  return [
    { name: phrase`CO₂ at most`, value: phrase`${fixed(carbonation.volumes, 1)} volumes` },
    {
      name: phrase`Pressure at ${measures.temperature(room.temperature_C)}`,
      value: doubtful(carbonation.gauge_bar.ambient),
    },
    { name: phrase`Pressure at ${measures.temperature(35)}, a warm day`, value: doubtful(carbonation.gauge_bar.at35) },
    { name: phrase`Made for`, value: rated_bar === undefined ? phrase`nobody has said` : said(rated_bar) },
  ];
}

function openHours({ low, high }: { readonly low: number; readonly high: number | null }): string {
  if (high === null) return phrase`at least ${hoursWords(low)}`;
  return hoursWords(low) === hoursWords(high) ? hoursWords(low) : phrase`${hoursWords(low)} to ${hoursWords(high)}`;
}

/** How cold the jar starts, what that costs, and that the rest of a slow start is not temperature. */
export function coldSentence({ sheet, cold, room }: JarScience, measures: Measures): string | null {
  const thaw = sheet?.thaw ?? null;
  if (thaw === null || cold === null) return null;
  const ice = thaw.ice_g >= 1 ? phrase`, with ${measures.mass(thaw.ice_g)} of ice left` : phrase`, with no ice left`;
  const start = phrase`The frozen fruit cools the jar to ${measures.temperature(thaw.mix_C)}${ice}.`;
  const warm =
    thaw.hoursToWithinOneDegree > 0
      ? phrase` After ${openHours(cold.hours)} it is within a degree of the room’s ${measures.temperature(room.temperature_C)}; that costs a start ${openHours(cold.lostHours)} at ${measures.temperature(22)}.`
      : phrase` It is within a degree of the room already.`;
  const rest = cold.slowStart?.sentence ?? phrase`If it starts later than that, the rest is not temperature.`;
  const against =
    cold.slowStart === null || cold.slowStart.late_h <= 0
      ? ''
      : phrase`Its first bubbles came ${hoursWords(cold.slowStart.late_h)} after those of jar ${cold.slowStart.against}. `;
  return `${start}${warm} ${against}${rest}`;
}

/** What the warming rests on: still air, or this jar's own two readings. */
export function coldBasis({ cold, room }: JarScience, measures: Measures): string {
  if (cold === null) return '';
  const said = fixed(cold.coefficient_W_per_m2K, 1);
  if (cold.own === null) {
    return phrase`Heat comes in at ${said} W per m² and degree, as in still air (common practice: 5 to 12). Two readings of this jar’s temperature while it warms, hours apart, would replace that by its own.`;
  }
  const { first, second } = cold.own;
  return phrase`Calibrated by this jar’s own readings: ${measures.temperature(first.temperature_C)} at ${hoursWords(first.hours)} and ${measures.temperature(second.temperature_C)} at ${hoursWords(second.hours)} in a room of ${measures.temperature(room.temperature_C)}. That is ${said} W per m² and degree (still air: 8).`;
}
