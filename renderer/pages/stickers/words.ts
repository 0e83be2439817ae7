import { counted } from '#renderer/format/words.ts';

export const words = {
  title: 'Code stickers for the cups',
  lead: 'The blind code and nothing else, one for each cup. Nothing here says which jar it is.',
  order: 'In which order',
  orders: {
    taster: 'taster by taster, as they are served',
    code: 'code by code, as they are poured',
  },
  orderHint: {
    taster: 'For setting a tray: peel off one taster’s cups in a row.',
    code: 'For pouring: peel off all cups of one jar in a row.',
  },
  print: 'Print stickers',
  cups: (tasters: number, samples: number, times: number, cups: number) =>
    `${counted(tasters, 'taster')} × ${counted(samples, 'sample')}${times === 1 ? '' : ` × ${times} servings`}: ${counted(cups, 'cup')}.`,
  runs: 'Which stickers are whose',
  run: (who: string, from: number, to: number) => `${who}: ${from === to ? from : `${from}–${to}`}`,
  sitting: (name: string, sitting: number) => `${name}, sitting ${sitting}`,
  tooMany: (cups: number, most: number) =>
    `${counted(cups, 'sticker')} are too many for one print; at most ${counted(most, 'sticker')}. Print them for some of the tasters.`,
  which: 'For whom',
  everybody: 'everybody',
} as const;
