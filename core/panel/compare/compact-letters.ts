const alphabet = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The name of the n-th letter: a … z, A … Z, then a1, b1 and so on. */
function letterName(index: number): string {
  const round = Math.floor(index / alphabet.length);
  return `${alphabet[index % alphabet.length] ?? ''}${round === 0 ? '' : round}`;
}

/**
 * Letters that say which samples differ: two samples share a letter exactly when they do not differ significantly.
 *
 * Method: insert and absorb. All samples start in one column; each significant pair splits the columns that hold both; columns
 * inside another are dropped. The column with the highest mean is named a.
 *
 * @param means one a sample, for the order of the letters
 * @param different significant pairs
 * @returns one string of letters a sample
 * Accuracy: exact: never contradicts the pairs it was given.
 * Source: H.-P. Piepho, J. Comput. Graph. Stat. 13 (2004) 456.
 * @example compactLetters([3, 2, 1], [{ a: 0, b: 2 }]) // ['a', 'ab', 'b']
 */
export function compactLetters(
  means: readonly number[],
  different: readonly { readonly a: number; readonly b: number }[],
): string[] {
  let columns: Set<number>[] = [new Set(means.keys())];
  for (const { a, b } of different) {
    const split: Set<number>[] = [];
    for (const column of columns) {
      if (column.has(a) && column.has(b)) {
        split.push(new Set([...column].filter((sample) => sample !== a)));
        split.push(new Set([...column].filter((sample) => sample !== b)));
      } else {
        split.push(column);
      }
    }
    columns = split.filter(
      (column, index) =>
        !split.some(
          (other, place) =>
            place !== index &&
            [...column].every((sample) => other.has(sample)) &&
            (other.size > column.size || place < index),
        ),
    );
  }
  const ranked = means.map((mean, sample) => ({ mean, sample })).sort((one, other) => other.mean - one.mean);
  const order = ranked.map(({ sample }) => sample);
  const key = (column: Set<number>): string => order.map((sample) => (column.has(sample) ? '0' : '1')).join('');
  columns.sort((one, other) => (key(one) < key(other) ? -1 : 1));
  return means.map((_, sample) =>
    columns.map((column, index) => (column.has(sample) ? letterName(index) : '')).join(''),
  );
}
