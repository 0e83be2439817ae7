import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { capital } from '#renderer/format/words.ts';
import type { Fact } from './facts.tsx';

function said(value: string | number | boolean): string {
  if (typeof value === 'boolean') return value ? phrase`yes` : phrase`no`;
  return typeof value === 'number' ? shownNumber(value) : value;
}

/** What was held equal beside the usual, under the names people gave it. */
export function alsoHeldFacts(also: Readonly<Record<string, string | number | boolean>>): Fact[] {
  return Object.entries(also).map(([name, value]) => ({ name: capital(name), value: said(value) }));
}
