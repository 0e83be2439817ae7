// Colours to draw with, by words in an ingredient's name. The label always says what it is; colour only helps the eye.

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

/** A colour for pieces or juice of this ingredient, #rrggbb. */
export function fruitColour(name: string): string {
  const plain = name.toLowerCase();
  return byWord.find(([words]) => words.test(plain))?.[1] ?? unknown;
}
