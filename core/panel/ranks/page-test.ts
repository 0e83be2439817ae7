import { normalBelow } from '#core/numeric/normal-distribution.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

/** How far one taster's doubled Σ j·rank lies above the least it can be, and the chance of each such distance. */
interface OneTaster {
  readonly least: number;
  readonly distances: readonly (readonly [number, number])[];
}

/** Already worked out, by the taster's sorted ranks: at most 2ᵏ⁻¹ patterns of ties for k samples. */
const patterns = new Map<string, OneTaster>();

/** Place by place over the subsets of ranks already handed out: 2ᵏ subsets instead of k! orders. */
function oneTaster(doubled: readonly number[]): OneTaster {
  const name = doubled.join();
  const known = patterns.get(name);
  if (known !== undefined) return known;
  const k = doubled.length;
  const most = doubled.reduce((sum, rank, place) => sum + rank * (place + 1), 0);
  const least = doubled.reduce((sum, rank, place) => sum + rank * (k - place), 0);
  const bySubset = Array.from({ length: 2 ** k }, () => new Float64Array(0));
  bySubset[0] = Float64Array.of(1);
  for (let subset = 1; subset < 2 ** k; subset += 1) {
    let place = 0;
    for (let bits = subset; bits > 0; bits >>= 1) place += bits & 1;
    const chances = new Float64Array(most + 1);
    for (let rank = 0; rank < k; rank += 1) {
      if ((subset & (1 << rank)) === 0) continue;
      const before = bySubset[subset ^ (1 << rank)] ?? chances;
      const shift = (doubled[rank] ?? 0) * place;
      for (let sum = 0; sum < before.length && sum + shift <= most; sum += 1) {
        chances[sum + shift] = (chances[sum + shift] as number) + (before[sum] as number) / place;
      }
    }
    bySubset[subset] = chances;
  }
  const all = bySubset[2 ** k - 1] ?? new Float64Array(0);
  const distances = [...all.entries()]
    .filter(([, chance]) => chance > 0)
    .map(([sum, chance]) => [sum - least, chance] as const);
  patterns.set(name, { least, distances });
  return { least, distances };
}

/** More samples, or a longer convolution, than this go by the normal limit. */
const mostSamples = 8;
const mostSteps = 800_000;

function exactTail(blocks: readonly (readonly number[])[], seen: number): number | null {
  const k = blocks[0]?.length ?? 0;
  if (k > mostSamples) return null;
  const sorted = blocks.map((block) => block.map((rank) => 2 * rank).sort((a, b) => a - b));
  // Without shared ranks only every second value can come about.
  const unit = sorted.every((block) => block.every((rank) => rank % 2 === 0)) ? 2 : 1;
  const width = sorted[0]?.reduce((sum, rank, place) => sum + rank * (2 * place + 1 - k), 0) ?? 0;
  if ((blocks.length * (blocks.length + 1) * (width / unit) ** 2) / 2 > mostSteps) return null;
  let chances = Float64Array.of(1);
  let least = 0;
  for (const block of sorted) {
    const one = oneTaster(block);
    const next = new Float64Array(chances.length + (one.distances.at(-1)?.[0] ?? 0) / unit);
    for (const [distance, part] of one.distances) {
      const shift = distance / unit;
      for (let sum = 0; sum < chances.length; sum += 1) {
        next[sum + shift] = (next[sum + shift] as number) + part * (chances[sum] as number);
      }
    }
    chances = next;
    least += one.least;
  }
  let tail = 0;
  for (let sum = chances.length - 1; least + sum * unit >= seen && sum >= 0; sum -= 1) tail += chances[sum] as number;
  return Math.min(1, tail);
}

/**
 * Page's test for ordered samples: whether the ranks rise with the order the samples are given in.
 *
 * Method: L = Σ j·Rⱼ over the rank sums. For small panels p counts every possible ranking (each taster's own ties kept); beyond
 * that the normal limit with the variance corrected for ties. One-sided: a fall gives a p near 1.
 *
 * @param blocks each taster's ranks, samples in their expected rising order; at least 2 tasters, 3 samples
 * @returns L, its one-sided p, and whether p is exact
 * @throws OutOfDomain with fewer tasters or samples
 * Accuracy: exact p to 1e-12.
 * Source: E. B. Page, J. Am. Stat. Assoc. 58 (1963) 216; R. E. Odeh, Commun. Stat. 6 (1977) 49 for the exact distribution.
 * @example pageTest([[1, 2, 3], [1, 2, 3]]) // { l: 28, p: 0.02778, exact: true }
 */
export function pageTest(blocks: readonly (readonly number[])[]): { l: number; p: number; exact: boolean } {
  const n = blocks.length;
  const k = blocks[0]?.length ?? 0;
  if (n < 2 || k < 3) throw new OutOfDomain('blocks', `${n} × ${k}`, 'at least 2 tasters and 3 samples');
  let doubledL = 0;
  let variance = 0;
  for (const block of blocks) {
    let squares = 0;
    block.forEach((rank, place) => {
      doubledL += 2 * rank * (place + 1);
      squares += (rank - (k + 1) / 2) ** 2;
    });
    variance += (squares * k * (k + 1)) / 12;
  }
  const l = doubledL / 2;
  const exact = exactTail(blocks, doubledL);
  if (exact !== null) return { l, p: exact, exact: true };
  const z = (l - (n * k * (k + 1) ** 2) / 4) / Math.sqrt(variance);
  return { l, p: variance > 0 ? normalBelow(-z) : 1, exact: false };
}
