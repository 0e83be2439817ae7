import type { Reader } from '#store/reader.ts';
import { sipsOfJar } from '#store/rows/jars.ts';
import type { Version } from '#store/rows/recipes.ts';
import { countedScores } from '#store/rows/set-asides.ts';

type Target = Version['target'];

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Standard deviation of the sample, n − 1 below; null for fewer than two values. */
function deviation(values: readonly number[]): number | null {
  if (values.length < 2) return null;
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
}

function grouped<Item>(items: readonly Item[], keyOf: (item: Item) => string): Map<string, Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return groups;
}

/** What the panel found at this level: mean of the tasters' means, and how far the tasters lie apart. */
export function panelTarget(read: Reader, trial: string, level: string): Target {
  const scores = countedScores(read, trial).filter(({ sample }) => sample === level);
  return [...grouped(scores, ({ attribute }) => attribute)].map(([attribute, own]) => {
    const byTaster = [...grouped(own, ({ taster }) => taster).values()].map((each) =>
      mean(each.map(({ score }) => score)),
    );
    return { attribute, mean: mean(byTaster), spread: deviation(byTaster), n: byTaster.length };
  });
}

/** What the maker found alone: the last sip of each jar. */
export function sipTarget(read: Reader, jars: readonly string[]): Target {
  const last = jars.flatMap((jar) => sipsOfJar(read, jar).slice(-1));
  return (['tang', 'fizz', 'sweetness', 'liking'] as const).flatMap((attribute) => {
    const values = last.map((sip) => sip[attribute]).filter((value) => value !== null);
    return values.length === 0 ? [] : [{ attribute, mean: mean(values), spread: deviation(values), n: values.length }];
  });
}
