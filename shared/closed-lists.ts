// Lists that both sides choose from. They stand apart from the schemas, which the page does without until it needs them.

/** What a taster avoids or an ingredient brings: the 14 of EU law (Regulation 1169/2011, Annex II) that kitchens meet. */
export const allergens = [
  'gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soya',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
] as const;

/** What can be seen in a jar. `mould` discards it; `looked` is a look that saw nothing new, `stirred` a stir. */
export const sightingKinds = [
  'first-bubbles',
  'steady-bubbles',
  'bubbles-slowing',
  'froth',
  'fruit-risen',
  'fruit-sunk',
  'colour-taken',
  'colour-fading',
  'cloudy',
  'clear',
  'smell',
  'film',
  'mould',
  'looked',
  'stirred',
  'other',
] as const;

export const putOffSpans = ['hour', 'tonight', 'tomorrow'] as const;

export const readingColumns = [
  'jar',
  'at',
  'hours',
  'brix',
  'sg',
  'ph',
  'temperature_C',
  'temperature_F',
  'acidity_g_per_L',
  'acidity_as',
  'note',
] as const;

/** How a bottle poured. */
export const pours = ['flat', 'gentle', 'lively', 'gushed'] as const;
