import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';

export const words = {
  title: phrase`Code stickers for the cups`,
  lead: phrase`The blind code and nothing else, one for each cup. Nothing here says which jar it is.`,
  order: phrase`In which order`,
  orders: {
    taster: phrase`taster by taster, as they are served`,
    code: phrase`code by code, as they are poured`,
  },
  orderHint: {
    taster: phrase`For setting a tray: peel off one taster’s cups in a row.`,
    code: phrase`For pouring: peel off all cups of one jar in a row.`,
  },
  print: phrase`Print stickers`,
  cups: (tasters: number, samples: number, times: number, cups: number) =>
    `${counted(tasters, 'taster')} × ${counted(samples, 'sample')}${times === 1 ? '' : phrase` × ${times} servings`}: ${counted(cups, 'cup')}.`,
  runs: phrase`Which stickers are whose`,
  run: (who: string, from: number, to: number) => `${who}: ${from === to ? from : `${from}–${to}`}`,
  sitting: (name: string, sitting: number) => phrase`${name}, sitting ${sitting}`,
  tooMany: (cups: number, most: number) =>
    phrase`${counted(cups, 'sticker')} are too many for one print; at most ${counted(most, 'sticker')}. Print them for some of the tasters.`,
} as const;
