import { phrase } from '#core/words/phrase.ts';

// Why a tasting can't be built yet, field by field.
export const draftWords = {
  nameMissing: phrase`Give it a name.`,
  nameTwice: (name: string) => phrase`“${name}” stands in the list already.`,
  noJar: phrase`Choose at least one jar.`,
  oneJarRanked: phrase`There is nothing to put in order with one jar. Choose at least two.`,
  noTaster: phrase`Choose who tastes.`,
  noAttribute: phrase`Leave at least one attribute in.`,
  amountZero: phrase`This must be more than nothing.`,
  tooFar: phrase`Drinks are served between −5 and 40 °C (23 and 104 °F).`,
  endsWrong: phrase`The ends must be two numbers, the lower one first.`,
  notRead: (rest: string) => phrase`“${rest}” is not understood here.`,
} as const;
