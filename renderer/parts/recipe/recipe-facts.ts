import { formatQuantity } from '#core/units/format-quantity.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { coverWords, daysWords, vesselWords } from '#renderer/format/words.ts';
import { alsoHeldFacts } from '#renderer/parts/facts/also-held.ts';
import type { Fact } from '#renderer/parts/facts/facts.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Draft = ValueOf<'recipes:preview'>;

/** "lidded jar, 1 L, 98 mm wide". */
function vesselLine({ kind, capacity_mL, diameter_mm }: Draft['vessel'], measures: Measures): string {
  const wide =
    diameter_mm === undefined ? [] : [phrase`${formatQuantity(diameter_mm, 'length', measures.system)} wide`];
  return [vesselWords[kind], measures.volume(capacity_mL), ...wide].join(', ');
}

/** How the drink is kept, and what was held equal: what nobody said is left out. */
export function recipeFacts(
  { formula, vessel, base, alsoHeld }: Pick<Draft, 'formula' | 'vessel' | 'base' | 'alsoHeld'>,
  measures: Measures,
): Fact[] {
  const facts: Fact[] = [{ name: phrase`Stands`, value: daysWords(formula.days) }];
  if (formula.temperature_C !== null)
    facts.push({ name: phrase`At`, value: measures.temperature(formula.temperature_C) });
  if (formula.cover !== null) facts.push({ name: phrase`Cover`, value: coverWords[formula.cover] });
  facts.push({ name: phrase`Tried in`, value: vesselLine(vessel, measures) });
  if (base !== null) facts.push({ name: phrase`Tried with`, value: base.name });
  facts.push(...alsoHeldFacts(alsoHeld));
  return facts;
}
