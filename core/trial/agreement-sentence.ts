import { phrase } from '#core/words/phrase.ts';
import { listed } from './finding-words.ts';

interface Agreeing {
  readonly taster: string;
  readonly agreement: number | null;
  readonly agreementInterval: readonly [number, number] | null;
}

/** From here on a taster is said to go with the others: a usual rule of thumb, no source. */
const goesWith = 0.5;

/**
 * How far the tasters go together on one attribute, in a sentence without blame.
 *
 * A taster goes with the others from a correlation of 0.5 on, and against them where the whole 95 % interval lies below zero; the rest go
 * their own way.
 *
 * @example agreementSentence('tang', [{ taster: 'Ann', agreement: 0.9, agreementInterval: [0.6, 1] }])
 * // 'On tang Ann goes with the others.'
 */
export function agreementSentence(attribute: string, tasters: readonly Agreeing[]): string {
  const told = tasters.flatMap((one) => (one.agreement === null ? [] : [{ ...one, agreement: one.agreement }]));
  if (told.length === 0) {
    return phrase`On ${attribute} nobody’s agreement can be told: it takes three samples or more that two tasters or more scored unlike.`;
  }
  const against = told.filter(({ agreementInterval }) => agreementInterval !== null && agreementInterval[1] < 0);
  const along = told.filter(({ agreement }) => agreement >= goesWith);
  const own = told.filter((one) => !along.includes(one) && !against.includes(one));
  if (along.length === tasters.length && tasters.length > 1) return phrase`On ${attribute} all tasters go together.`;
  const names = (group: readonly { taster: string }[]) => listed(group.map(({ taster }) => taster));
  const said = [
    ...(along.length === 0
      ? []
      : along.length === 1
        ? [phrase`On ${attribute} ${names(along)} goes with the others.`]
        : [phrase`On ${attribute} ${names(along)} go with the others.`]),
    ...(own.length === 0
      ? []
      : own.length === 1
        ? [phrase`On ${attribute} ${names(own)} goes their own way.`]
        : [phrase`On ${attribute} ${names(own)} go their own way.`]),
    ...(against.length === 0
      ? []
      : against.length === 1
        ? [phrase`On ${attribute} ${names(against)} runs against the others: perhaps the scale was turned round.`]
        : [phrase`On ${attribute} ${names(against)} run against the others: perhaps the scale was turned round.`]),
  ];
  return said.join(' ');
}
