import { ingredientName } from '#core/trial/formula.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { additionWords, coverWords, daysWords, joined, vesselWords } from '#renderer/format/words.ts';
import { alsoHeldFacts } from '#renderer/parts/facts/also-held.ts';
import { type Fact, Facts } from '#renderer/parts/facts/facts.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { calendarWords } from './words.ts';

type Trial = ValueOf<'trials:open'>;

/** What every jar of the trial shares. What nobody said is left out. */
export function HeldFacts({ trial, measures }: { readonly trial: Trial; readonly measures: Measures }) {
  const { held, vessel, base } = trial;
  const isStaggered = new Set(trial.levelsWhole.map(({ formula }) => formula.days)).size > 1;
  const facts: Fact[] = [
    {
      name: phrase`Base`,
      value:
        base === null
          ? phrase`${measures.volume(trial.baseEach_mL)} each`
          : phrase`${measures.volume(trial.baseEach_mL)} each of ${base.name}`,
    },
    { name: phrase`Vessel`, value: `${vesselWords[vessel.kind]}, ${measures.volume(vessel.capacity_mL)}` },
    // Where all jars stand equally long there is only one way round.
    ...(isStaggered ? [{ name: phrase`Calendar`, value: calendarWords[trial.calendar] }] : []),
  ];
  if (held.additions.length > 0) {
    // Where the amount moves, the held grams are only the proportion.
    const moved = trial.factor === 'amount';
    const added = held.additions.map((one) => (moved ? ingredientName(one.ingredient) : additionWords(one, measures)));
    facts.push({ name: phrase`Added`, value: joined(added) });
  }
  if (held.days !== null) facts.push({ name: phrase`Days`, value: daysWords(held.days) });
  if (held.cover !== null) facts.push({ name: phrase`Cover`, value: coverWords[held.cover] });
  if (held.temperature_C !== null)
    facts.push({ name: phrase`Temperature`, value: measures.temperature(held.temperature_C) });
  facts.push(...alsoHeldFacts(held.also));
  return <Facts facts={facts} />;
}
