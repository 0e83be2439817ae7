import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { type Addition, ingredientName } from '#core/trial/formula.ts';

// Colours to draw with: the pantry's own, and by words in the name for what it doesn't bring. The label always says what it is; colour
// only helps the eye.

const byWord: readonly (readonly [RegExp, string])[] = [
  [/strawberr/, '#d1404f'],
  [/raspberr/, '#c2325b'],
  [/cranberr|red currant|pomegranate/, '#b3243f'],
  [/cherr/, '#8e1f3a'],
  [/blueberr|bilberr/, '#45508f'],
  [/blackberr|blackcurrant|elderberr|grape|plum|fig/, '#5a2c5e'],
  [/beet|hibiscus/, '#93204f'],
  [/rhubarb/, '#c9707c'],
  [/peach|apricot|mango|passion|papaya/, '#e89b3c'],
  [/orange|tangerine|carrot|clementine/, '#ec8722'],
  [/pineapple|lemon|quince|turmeric/, '#e8c547'],
  [/ginger|apple|pear|raisin|date/, '#d3b169'],
  [/lime|kiwi|mint|basil|cucumber|gooseberr|lemongrass|thyme|rosemary|sage/, '#7c9a3f'],
  [/watermelon/, '#e0616a'],
  [/tea|coffee|cocoa|molasses|tamarind/, '#7a4a2b'],
  [/rye|bread|malt|grain/, '#a9743f'],
  [/sugar|honey|syrup|coconut/, '#e0cf9a'],
];

const unknown = '#a2788c';

const found = new Map<string, string>();

/** The pantry's colour for pieces or juice of this ingredient, #rrggbb; one by its name where the pantry has none. */
export function fruitColour(name: string): string {
  const plain = name.toLowerCase();
  const known = found.get(plain);
  if (known !== undefined) return known;
  const colour = findIngredient(plain)?.colour ?? byWord.find(([words]) => words.test(plain))?.[1] ?? unknown;
  found.set(plain, colour);
  return colour;
}

/** The colour a jar takes on: that of the heaviest thing in it that is no sweetener, else of the heaviest; null when nothing is added. */
export function jarColour(additions: readonly Addition[]): string | null {
  const byMass = additions.toSorted((a, b) => b.mass_g - a.mass_g).map(({ ingredient }) => ingredientName(ingredient));
  const main = byMass.find((name) => findIngredient(name)?.category !== 'sweetener') ?? byMass[0];
  return main === undefined ? null : fruitColour(main);
}
