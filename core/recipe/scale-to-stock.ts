import { OutOfDomain } from '#core/out-of-domain.ts';

/** A drink as it was made once, by name and amount. */
export interface NeededAmounts {
  readonly base_mL: number;
  readonly volume_mL: number;
  readonly additions: readonly { readonly name: string; readonly mass_g: number }[];
}

/** What is there; `null` or absent: nobody counted, so it does not limit. */
export interface AmountsOnHand {
  readonly base_mL: number | null;
  readonly additions: Readonly<Record<string, number | null>>;
}

/** How much can be made, and of what there is least. */
export interface ScaledToStock {
  readonly volume_mL: number;
  /** `base`, or the name of the addition that runs out first. */
  readonly limiting: { readonly base: true } | { readonly name: string };
  /** What nobody counted. */
  readonly uncounted: readonly string[];
}

/**
 * How much of a drink can be made from what is on hand, and what runs out first.
 *
 * Method: everything grows in one proportion; the smallest share of there to needed decides. An ingredient that stands in twice is needed
 * twice. Leaves out losses on straining.
 *
 * @param needed amounts of one make, each at least 0, its volume above 0
 * @param have what was counted, each at least 0
 * @returns `null` when nothing that is needed was counted
 * @throws OutOfDomain when an amount is negative or not finite, or the volume is 0
 * @example scaleToStock({ base_mL: 800, volume_mL: 880, additions: [{ name: 'ginger', mass_g: 10 }] }, { base_mL: 4000, additions: { ginger: 25 } })
 */
export function scaleToStock(needed: NeededAmounts, have: AmountsOnHand): ScaledToStock | null {
  if (!(needed.volume_mL > 0)) throw new OutOfDomain('volume_mL', needed.volume_mL, 'more than 0');
  const sums = new Map<string, number>();
  for (const { name, mass_g } of needed.additions) sums.set(name, (sums.get(name) ?? 0) + amount(name, mass_g));
  const shares: { share: number; limiting: ScaledToStock['limiting'] }[] = [];
  const uncounted: string[] = [];
  if (have.base_mL !== null && amount('base_mL', needed.base_mL) > 0) {
    shares.push({ share: amount('base_mL', have.base_mL) / needed.base_mL, limiting: { base: true } });
  }
  for (const [name, mass_g] of sums) {
    if (mass_g === 0) continue;
    const there = have.additions[name] ?? null;
    if (there === null) uncounted.push(name);
    else shares.push({ share: amount(name, there) / mass_g, limiting: { name } });
  }
  const [first, ...others] = shares;
  if (first === undefined) return null;
  const least = others.reduce((low, one) => (one.share < low.share ? one : low), first);
  return { volume_mL: least.share * needed.volume_mL, limiting: least.limiting, uncounted };
}

function amount(name: string, value: number): number {
  if (!(value >= 0 && Number.isFinite(value))) throw new OutOfDomain(name, value, '0 or more');
  return value;
}
