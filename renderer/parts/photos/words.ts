import { refusedPictureWords } from '#shared/picture-kind.ts';

/** Why a file did not become a photo. */
export type PictureFault = keyof typeof refusedPictureWords | 'too-large' | 'undecoded' | 'unencoded';

export const pictureFaultWords: Readonly<Record<PictureFault, string>> = {
  ...refusedPictureWords,
  'too-large': 'This file is larger than 100 MB. Save the picture smaller, and add that.',
  undecoded:
    'This picture can’t be read: it is cut off, damaged, or larger than can be shown. Save it anew as JPEG, and add that.',
  unencoded:
    'There was not enough memory to make this picture smaller. Close other programs, or save it smaller first.',
};

export const words = {
  add: 'Add photos',
  drop: 'or drop pictures here, or paste one.',
  dropNow: 'Let go to add.',
  kept: 'Kept at up to 1600 pixels, without the place and camera that a picture may tell.',
  adding: (name: string) => `Adding ${name}…`,
  added: (count: number) => (count === 1 ? 'The photo is added.' : `${count} photos are added.`),
  refused: (name: string, why: string) => `${name}: ${why}`,
  pasted: 'The pasted picture',
  of: (jar: string, when: string) => `Jar ${jar}, ${when}`,
  show: (what: string) => `Show large: ${what}`,
  missing: 'Its file is missing.',
  altered: 'Its file was altered, so it is not shown.',
  remove: 'Take out',
  removeOf: (what: string) => `Take out the photo: ${what}`,
  removed: 'The photo is taken out.',
} as const;
