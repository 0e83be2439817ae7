/** Rank sums that can come about, each as twice the sums in rising order, with its chance. */
export interface RankSumState {
  /** Twice the rank sums, so that shared ranks stay whole numbers. */
  readonly doubled: readonly number[];
  readonly chance: number;
}

/** The different orders of a list, each once. */
function arrangements(values: readonly number[]): number[][] {
  if (values.length === 0) return [[]];
  const firsts = [...new Set(values)];
  return firsts.flatMap((first) => {
    const rest = [...values];
    rest.splice(rest.indexOf(first), 1);
    return arrangements(rest).map((order) => [first, ...order]);
  });
}

/** Steps of work after which an exact distribution is not worth its time. */
const mostSteps = 300_000;

/**
 * Every set of rank sums that can come about when each taster ranks at random, with its chance.
 *
 * Method: convolution, taster by taster. Which sample has which sum does not matter to a test between all of them, so only the
 * sorted sums are kept. Ties are taken as they stand: each taster's own ranks in every order.
 *
 * @param blocks each taster's ranks
 * @param budget steps of work allowed; the default keeps it well under a tenth of a second
 * @returns the distribution, or null when it would take more steps
 * Accuracy: chances sum to 1 within 1e-12.
 */
export function rankSumDistribution(blocks: readonly (readonly number[])[], budget = mostSteps): RankSumState[] | null {
  const size = blocks[0]?.length ?? 0;
  if (size < 2 || size > 7) return null;
  // Whole ranks count in ones, shared ranks in halves; from zero, so that the codes stay small.
  const scale = blocks.some((block) => block.some((rank) => !Number.isInteger(rank))) ? 2 : 1;
  const radix = scale * (size - 1) * blocks.length + 1;
  // The sums add up to a known total: the last needs no place in the code.
  if (radix ** (size - 1) > 2 ** 31) return null;
  const known = new Map<string, number[][]>();
  const before = new Array<number>(size).fill(0);
  const sums = new Array<number>(size).fill(0);
  let total = 0;
  const decode = (key: number): void => {
    let rest = key;
    let last = total;
    for (let place = 0; place < size - 1; place += 1) {
      const sum = rest % radix;
      before[place] = sum;
      last -= sum;
      rest = (rest - sum) / radix;
    }
    before[size - 1] = last;
  };
  let states = new Map<number, number>([[0, 1]]);
  let steps = 0;
  for (const block of blocks) {
    const counted = block.map((rank) => scale * (rank - 1)).sort((one, other) => one - other);
    const name = counted.join();
    const orders = known.get(name) ?? arrangements(counted);
    known.set(name, orders);
    steps += states.size * orders.length;
    if (steps > budget) return null;
    const next = new Map<number, number>();
    for (const [key, chance] of states) {
      decode(key);
      const part = chance / orders.length;
      for (const order of orders) {
        for (let place = 0; place < size; place += 1) {
          const sum = (before[place] as number) + (order[place] as number);
          let slot = place;
          while (slot > 0 && (sums[slot - 1] as number) > sum) {
            sums[slot] = sums[slot - 1] as number;
            slot -= 1;
          }
          sums[slot] = sum;
        }
        let code = 0;
        for (let place = size - 2; place >= 0; place -= 1) code = code * radix + (sums[place] as number);
        next.set(code, (next.get(code) ?? 0) + part);
      }
    }
    total += counted.reduce((sum, rank) => sum + rank, 0);
    states = next;
  }
  return [...states].map(([key, chance]) => {
    decode(key);
    return { doubled: before.map((sum) => (2 / scale) * sum + 2 * blocks.length), chance };
  });
}
