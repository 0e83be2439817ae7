import { ingredientName } from '#core/trial/formula.ts';
import { pullDue } from '#core/trial/pull-due.ts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { additionWords, coverWords, daysWords, joined, vesselWords } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Trial = ValueOf<'trials:open'>;
type Jar = Trial['jarsWhole'][number];

/** What every jar shared, in one line. What nobody said is left out. */
export function heldWords({ held, vessel, base, baseEach_mL, factor }: Trial, measures: Measures): string {
  // Where the amount moves, the held grams are only the proportion.
  const added = held.additions.map((one) =>
    factor === 'amount' ? ingredientName(one.ingredient) : additionWords(one, measures),
  );
  const also = Object.entries(held.also).map(([name, value]) => {
    return `${name} ${typeof value === 'boolean' ? (value ? phrase`yes` : phrase`no`) : typeof value === 'number' ? shownNumber(value) : value}`;
  });
  const parts = [
    base === null
      ? phrase`${measures.volume(baseEach_mL)} base each`
      : phrase`${measures.volume(baseEach_mL)} base each of ${base.name}`,
    `${vesselWords[vessel.kind]}, ${measures.volume(vessel.capacity_mL)}`,
    ...(added.length === 0 ? [] : [joined(added)]),
    ...(held.days === null ? [] : [daysWords(held.days)]),
    ...(held.cover === null ? [] : [coverWords[held.cover]]),
    ...(held.temperature_C === null ? [] : [measures.temperature(held.temperature_C)]),
    ...also,
  ];
  return `${parts.join('; ')}.`;
}

/** From when to when a jar stood. */
export function stoodWords(jar: Jar): string {
  return words.stood(dayAndTime(jar.startedAt ?? jar.plannedStart), dayAndTime(jar.pulledAt ?? pullDue(jar)));
}
