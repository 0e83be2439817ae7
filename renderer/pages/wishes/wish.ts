import type { ValueOf } from '#shared/contract/all-requests.ts';

type Profile = ValueOf<'profiles:open'>;
export type Wish = Profile['wishes'][number];
export type Goal = Wish['goal'];
export type Attribute = Profile['attributes'][number];

/** An attribute with what is wanted of it; null: it doesn't matter. */
export interface WishPlace {
  readonly attribute: Attribute;
  readonly wish: Wish | null;
}

/** Every attribute that can be wished for, and those wished for that no tasting asks about any more. */
export function wishPlaces({ attributes, wishes }: Pick<Profile, 'attributes' | 'wishes'>): WishPlace[] {
  const asked = attributes.map((attribute) => ({
    attribute,
    wish: wishes.find((wish) => wish.attribute === attribute.name) ?? null,
  }));
  const others = wishes
    .filter(({ attribute }) => !attributes.some(({ name }) => name === attribute))
    .map((wish) => ({ attribute: { name: wish.attribute, low: wish.low, high: wish.high }, wish }));
  return [...asked, ...others];
}

/** A first wish for an attribute: its whole scale, a target in the middle. What was said before is kept. */
export function wishFor({ name, low, high }: Attribute, goal: Goal, before: Wish | null): Wish {
  const ends = before ?? { low, high, importance: 1 };
  return {
    attribute: name,
    goal,
    low: ends.low,
    high: ends.high,
    importance: ends.importance,
    target: goal === 'target' ? (ends.low + ends.high) / 2 : null,
  };
}

/** The list with one attribute's wish put in, changed or taken out. */
export function withWish(wishes: readonly Wish[], attribute: string, wish: Wish | null): Wish[] {
  if (wish === null) return wishes.filter((each) => each.attribute !== attribute);
  const stands = wishes.some((each) => each.attribute === attribute);
  return stands ? wishes.map((each) => (each.attribute === attribute ? wish : each)) : [...wishes, wish];
}

/** How right a value is, as the points of a line over the scale: 0 will not do, 1 is fully right. */
export function slopePoints({ goal, low, high, target }: Wish, from: number, to: number): [number, number][] {
  if (goal === 'target') {
    return [
      [Math.min(from, low), 0],
      [low, 0],
      [target ?? (low + high) / 2, 1],
      [high, 0],
      [Math.max(to, high), 0],
    ];
  }
  const [left, right] = goal === 'more' ? [0, 1] : [1, 0];
  return [
    [Math.min(from, low), left],
    [low, left],
    [high, right],
    [Math.max(to, high), right],
  ];
}
