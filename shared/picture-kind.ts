import { phrase } from '#core/words/phrase.ts';

/** What the first bytes of a file say that it is, as far as adding photos cares. */
export type PictureKind = 'jpeg' | 'png' | 'webp' | 'heic' | 'drawing' | 'program' | 'other';

/** The kinds that a kitchen keeps. */
export const keptPictures = ['jpeg', 'png', 'webp'] as const;
export type KeptPicture = (typeof keptPictures)[number];

/** The largest picture that a kitchen takes. */
export const pictureLimit_bytes = 8 * 1024 * 1024;

/** Why a file of each other kind is no photo here, with the way out. */
export const refusedPictureWords: Readonly<Record<Exclude<PictureKind, KeptPicture>, string>> = {
  get heic() {
    return phrase`This is a HEIC picture, which can’t be shown here. Save or send it as JPEG, and add that.`;
  },
  get drawing() {
    return phrase`This is a drawing or a web page, not a photo. Add a JPEG, PNG or WebP picture.`;
  },
  get program() {
    return phrase`This is a program or an archive, whatever its name says. Nothing was added.`;
  },
  get other() {
    return phrase`This is not a picture that can be shown here. Add a JPEG, PNG or WebP picture.`;
  },
};

function begins(bytes: Uint8Array, ...marks: readonly number[]): boolean {
  return marks.every((mark, place) => bytes[place] === mark);
}

function latin(bytes: Uint8Array, from: number, to: number): string {
  return String.fromCharCode(...bytes.subarray(from, to));
}

/** Brands of the HEIF family that hold HEVC pictures, or do not say what they hold. */
const heicBrands = new Set(['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1']);

/**
 * Tells pictures from other files by their first bytes; a file's name counts for nothing.
 *
 * Leaves out whether the rest is whole: `pictureSize` and the decoder find that.
 *
 * @param bytes the file, or its first 512 bytes at least
 * Source: JPEG: ITU-T T.81 B.1.1.3; PNG: W3C PNG specification 5.2; WebP: RFC 9649 2.4; HEIF brands: ISO/IEC 23008-12 (from memory);
 * programs and archives: their usual marks, common practice
 * @example pictureKind(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0)) // 'jpeg'
 */
export function pictureKind(bytes: Uint8Array): PictureKind {
  if (begins(bytes, 0xff, 0xd8, 0xff)) return 'jpeg';
  if (begins(bytes, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return 'png';
  if (latin(bytes, 0, 4) === 'RIFF' && latin(bytes, 8, 12) === 'WEBP') return 'webp';
  if (latin(bytes, 4, 8) === 'ftyp') return heicBrands.has(latin(bytes, 8, 12)) ? 'heic' : 'other';
  const isProgram =
    latin(bytes, 0, 2) === 'MZ' ||
    latin(bytes, 0, 2) === '#!' ||
    latin(bytes, 0, 4) === '\u007fELF' ||
    latin(bytes, 0, 4) === 'PK\u0003\u0004' ||
    begins(bytes, 0xca, 0xfe, 0xba, 0xbe) ||
    begins(bytes, 0xcf, 0xfa, 0xed, 0xfe) ||
    begins(bytes, 0xce, 0xfa, 0xed, 0xfe);
  if (isProgram) return 'program';
  const text = latin(bytes, 0, 512).replace(/^(\u00ef\u00bb\u00bf)?\s*/, '');
  return /^<(\?xml|!doctype|!--|svg|html)/i.test(text) ? 'drawing' : 'other';
}
