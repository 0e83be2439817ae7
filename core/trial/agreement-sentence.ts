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
    return `On ${attribute} nobody’s agreement can be told: it takes three samples or more that two tasters or more scored unlike.`;
  }
  const against = told.filter(({ agreementInterval }) => agreementInterval !== null && agreementInterval[1] < 0);
  const along = told.filter(({ agreement }) => agreement >= goesWith);
  const own = told.filter((one) => !along.includes(one) && !against.includes(one));
  const names = (group: readonly { taster: string }[]) => listed(group.map(({ taster }) => taster));
  const parts = [
    ...(along.length === 0
      ? []
      : along.length === tasters.length && tasters.length > 1
        ? ['all tasters go together']
        : [`${names(along)} ${along.length === 1 ? 'goes' : 'go'} with the others`]),
    ...(own.length === 0 ? [] : [`${names(own)} ${own.length === 1 ? 'goes their' : 'go their'} own way`]),
    ...(against.length === 0
      ? []
      : [
          `${names(against)} ${against.length === 1 ? 'runs' : 'run'} against the others: perhaps the scale was turned round`,
        ]),
  ];
  return `On ${attribute} ${parts.join('; ')}.`;
}
