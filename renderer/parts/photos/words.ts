import { phrase } from '#core/words/phrase.ts';
import { refusedPictureWords } from '#shared/picture-kind.ts';

/** Why a file did not become a photo. */
export type PictureFault = keyof typeof refusedPictureWords | 'too-large' | 'undecoded' | 'unencoded';

export const pictureFaultWords: Readonly<Record<PictureFault, string>> = {
  ...refusedPictureWords,
  'too-large': phrase`This file is larger than 100 MB. Save the picture smaller, and add that.`,
  undecoded: phrase`This picture can’t be read: it is cut off, damaged, or larger than can be shown. Save it anew as JPEG, and add that.`,
  unencoded: phrase`There was not enough memory to make this picture smaller. Close other programs, or save it smaller first.`,
};

export const words = {
  add: phrase`Add photos`,
  drop: phrase`or drop pictures here, or paste one.`,
  dropNow: phrase`Let go to add.`,
  kept: phrase`Kept at up to 1600 pixels, without the place and camera that a picture may tell.`,
  adding: (name: string) => phrase`Adding ${name}…`,
  added: (count: number) => (count === 1 ? phrase`The photo is added.` : phrase`${count} photos are added.`),
  refused: (name: string, why: string) => `${name}: ${why}`,
  pasted: phrase`The pasted picture`,
  of: (jar: string, when: string) => phrase`Jar ${jar}, ${when}`,
  show: (what: string) => phrase`Show large: ${what}`,
  missing: phrase`Its file is missing.`,
  altered: phrase`Its file was altered, so it is not shown.`,
  remove: phrase`Take out`,
  removeOf: (what: string) => phrase`Take out the photo: ${what}`,
  removed: phrase`The photo is taken out.`,
} as const;
