import { phrase } from '#core/words/phrase.ts';
import type { TermEntry } from './term-entry.ts';

/** Words of the cellar: what is put into jars, and what comes of it. */
export const jarTermWords = {
  base: {
    forms: phrase`base|bases`,
    meaning: phrase`The plain fermented drink that all jars of a trial are filled from.`,
  },
  culture: {
    forms: phrase`culture|cultures`,
    meaning: phrase`The living grains, mother or starter that makes a base.`,
  },
  mother: {
    forms: phrase`kombucha mother|mother|mothers`,
    meaning: phrase`The rubbery skin of yeast and bacteria that makes kombucha.`,
  },
  grains: {
    forms: phrase`kefir grains|grains`,
    meaning: phrase`Small living lumps of yeast and bacteria that make kefir; no cereal.`,
  },
  firstFerment: {
    forms: phrase`first ferment|first ferments`,
    meaning: phrase`Sugar water, tea or juice with the culture in it, until it is strained.`,
  },
  secondFerment: {
    forms: phrase`second ferment|second ferments`,
    meaning: phrase`The strained base with fruit or herbs, in jars.`,
  },
  refreshed: {
    forms: phrase`refreshed|refresh`,
    meaning: phrase`A culture is refreshed by feeding it: new sugar water, tea or juice.`,
  },
  drained: { forms: phrase`drained|`, meaning: phrase`Weighed after the liquid has run off.` },
  vessel: {
    forms: phrase`vessel|vessels`,
    meaning: phrase`What a drink ferments in: an open jar, one with a lid, a bottle.`,
  },
  cover: {
    forms: phrase`cover|covers`,
    meaning: phrase`What lies on a jar while it ferments: cloth and airlock let gas out, a lid keeps it in.`,
  },
  airlock: {
    forms: phrase`airlock|airlocks`,
    meaning: phrase`A valve on a jar: gas gets out, no air gets in.`,
  },
  closure: {
    forms: phrase`closure|closures|kind of bottle`,
    meaning: phrase`How a bottle is shut, and so what pressure it can hold: swing top, crown cap, plastic.`,
  },
  headspace: {
    forms: phrase`headspace|`,
    meaning: phrase`The room left in a jar above the drink; froth and rising fruit need it.`,
  },
  start: {
    forms: phrase`Start|Started|planned start|the first jar starts|since the start|since its start|hours since start`,
    meaning: phrase`The moment fruit and base come together.`,
  },
  pull: {
    forms: phrase`pull|pulls|pulled|planned pull`,
    meaning: phrase`Taking a jar out to chill or taste: its days are over.`,
  },
  staggered: {
    forms: phrase`Calendar|which way round?|start together, pull one after the other|start one after the other, pull together`,
    meaning: phrase`Jars of different days start together and are pulled in turn, or the other way round.`,
  },
  strain: {
    forms: phrase`strain|strains|strained`,
    meaning: phrase`Taking the fruit out of a jar, or the culture out of a base.`,
  },
  discard: {
    forms: phrase`discard|discarded`,
    meaning: phrase`Giving a jar up, for mould or a mishap: nobody tastes it any more.`,
  },
  formula: {
    forms: phrase`formula|formulas|whole formula`,
    meaning: phrase`All that goes into a jar, with its weights, days, cover and warmth.`,
  },
  houseRecipe: {
    forms: phrase`house recipe|house recipes`,
    meaning: phrase`A level you decided for, written down so that it can be made again.`,
  },
  promote: { forms: phrase`promote|`, meaning: phrase`Writing one level of a trial down as a house recipe.` },
  version: {
    forms: phrase`version|versions`,
    meaning: phrase`A house recipe as it was at one time; a change makes a new one, the old ones stay.`,
  },
  batch: { forms: phrase`batch|batches`, meaning: phrase`One make of a house recipe.` },
  lotCode: {
    forms: phrase`Lot|lot code|lot codes`,
    meaning: phrase`A short mark on a bottle that leads back to the batch it came from.`,
  },
  perLitre: {
    forms: phrase`per litre of base|per litre`,
    meaning: phrase`For each litre of base, so that it can be scaled to any amount.`,
  },
  pearsonSquare: {
    forms: phrase`Pearson square|`,
    meaning: phrase`The old sum for a blend: how much of each of two drinks gives the sweetness wanted.`,
  },
  pantry: {
    forms: phrase`pantry|`,
    meaning: phrase`All that can go into a jar, with what it holds and what a cup of it weighs.`,
  },
  kitchenMeasure: {
    forms: phrase`kitchen measure|kitchen measures`,
    meaning: phrase`A cup, a spoon, a piece: the pantry knows what one of them weighs.`,
  },
  allergen: {
    forms: phrase`allergen|allergens`,
    meaning: phrase`What makes some people ill even in traces, such as nuts, milk or gluten.`,
  },
  sucrose: { forms: phrase`sucrose|`, meaning: phrase`Table sugar; yeast splits it into glucose and fructose.` },
  glucose: { forms: phrase`glucose|`, meaning: phrase`Grape sugar: yeast takes it first.` },
  fructose: { forms: phrase`fructose|`, meaning: phrase`Fruit sugar: the sweetest; yeast takes it after glucose.` },
  caution: {
    forms: phrase`caution|cautions`,
    meaning: phrase`A usual warning of the trade: pressure, mould, alcohol, acidity, allergens.`,
  },
} as const satisfies Readonly<Record<string, TermEntry>>;
