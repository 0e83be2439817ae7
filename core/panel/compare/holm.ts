/**
 * Adjusts p values for having asked several questions (Holm).
 *
 * Method: the smallest times the number of questions, the next times one less, and so on, never falling. Holds the chance of any
 * false finding, whatever the dependence between the questions.
 *
 * @param p values, each 0 to 1
 * @returns adjusted values in the same order, each at most 1
 * Source: S. Holm, Scandinavian Journal of Statistics 6 (1979) 65.
 * @example holm([0.01, 0.04, 0.03]) // [0.03, 0.06, 0.06]
 */
export function holm(p: readonly number[]): number[] {
  const order = p.map((value, index) => ({ value, index })).sort((one, other) => one.value - other.value);
  const adjusted = new Array<number>(p.length).fill(1);
  let largest = 0;
  order.forEach(({ value, index }, place) => {
    largest = Math.max(largest, Math.min(1, value * (p.length - place)));
    adjusted[index] = largest;
  });
  return adjusted;
}
