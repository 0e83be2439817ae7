// Why a tasting can't be built yet, field by field.
export const draftWords = {
  nameMissing: 'Give it a name.',
  nameTwice: (name: string) => `“${name}” stands in the list already.`,
  noJar: 'Choose at least one jar.',
  oneJarRanked: 'There is nothing to put in order with one jar. Choose at least two.',
  noTaster: 'Choose who tastes.',
  noAttribute: 'Leave at least one attribute in.',
  amountZero: 'This must be more than nothing.',
  tooFar: 'Drinks are served between −5 and 40 °C (23 and 104 °F).',
  endsWrong: 'The ends must be two numbers, the lower one first.',
  notRead: (rest: string) => `“${rest}” is not understood here.`,
} as const;
