import { ChanceTable } from './chance-table.ts';

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

/** Where one taster's ranks meet the sums so far: each order gives sums, and those a chance. */
interface Meeting {
  readonly before: Int32Array;
  /** The orders one behind the other. */
  readonly orders: Int32Array;
  readonly chance: number;
}

/** Every set of rank sums that all tasters but the last can bring about when each ranks at random. */
export interface RankSumWalk {
  readonly scale: 1 | 2;
  /** Every meeting with the last taster's ranks, the sums of the others being known with their chance. */
  forEachMeeting(visit: (meeting: Meeting) => void): void;
}

/**
 * Convolutes all tasters but the last.
 *
 * @param blocks each taster's ranks, ties sharing their mean rank
 * @param budget steps of work allowed, the last taster's meetings included
 * @returns null when it would take more steps, with fewer than 2 samples or more than 7
 */
export function rankSumWalk(blocks: readonly (readonly number[])[], budget: number): RankSumWalk | null {
  const size = blocks[0]?.length ?? 0;
  if (size < 2 || size > 7) return null;
  // Whole ranks count in ones, shared ranks in halves; from zero, so that the codes stay small.
  const scale = blocks.some((block) => block.some((rank) => !Number.isInteger(rank))) ? 2 : 1;
  const radix = scale * (size - 1) * blocks.length + 1;
  // The sums add up to a known total: the last needs no place in the code.
  if (radix ** (size - 1) > 2 ** 31) return null;
  const known = new Map<string, Int32Array>();
  const before = new Int32Array(size);
  const sums = new Int32Array(size);
  let total = 0;
  const meet = (states: ChanceTable, orders: Int32Array, visit: (meeting: Meeting) => void): void =>
    states.forEach((key, chance) => {
      let [rest, last] = [key, total];
      for (let place = 0; place < size - 1; place += 1) {
        const sum = rest % radix;
        before[place] = sum;
        last -= sum;
        rest = (rest - sum) / radix;
      }
      before[size - 1] = last;
      visit({ before, orders, chance: (chance * size) / orders.length });
    });
  const tasters = blocks.map((block) => {
    const counted = block.map((rank) => scale * (rank - 1)).sort((one, other) => one - other);
    const name = counted.join();
    const orders = known.get(name) ?? Int32Array.from(arrangements(counted).flat());
    known.set(name, orders);
    return { orders, given: counted.reduce((sum, rank) => sum + rank, 0) };
  });
  let states = new ChanceTable();
  states.add(0, 1);
  let steps = 0;
  let left = tasters.reduce((sum, { orders }) => sum + orders.length / size, 0);
  for (const [number, { orders, given }] of tasters.entries()) {
    // Adding the same rising ranks to two different states leaves them different: there will never be fewer than now.
    if (steps + states.size * left > budget) return null;
    steps += (states.size * orders.length) / size;
    left -= orders.length / size;
    if (number === blocks.length - 1) {
      const all = states;
      return { scale, forEachMeeting: (visit) => meet(all, orders, visit) };
    }
    const next = new ChanceTable();
    meet(states, orders, ({ chance }) => {
      for (let order = 0; order < orders.length; order += size) {
        for (let place = 0; place < size; place += 1) {
          const sum = (before[place] as number) + (orders[order + place] as number);
          let slot = place;
          while (slot > 0 && (sums[slot - 1] as number) > sum) {
            sums[slot] = sums[slot - 1] as number;
            slot -= 1;
          }
          sums[slot] = sum;
        }
        let code = 0;
        for (let place = size - 2; place >= 0; place -= 1) code = code * radix + (sums[place] as number);
        next.add(code, chance);
      }
    });
    total += given;
    states = next;
  }
  return null;
}
