import { describe, expect, it } from 'vitest';
import { decodeOptions, fitPicture } from '#renderer/parts/photos/fit-picture.ts';
import { momentOfFile } from '#renderer/parts/photos/use-add-photos.ts';
import { pictureKind } from '#shared/picture-kind.ts';
import { pictureSize } from '#shared/picture-size.ts';
import {
  heicHead,
  jpegWithPlace,
  onePixelJpeg,
  onePixelPng,
  programHead,
  webpHead,
} from '#tests/desk/small-pictures.ts';

describe('fitPicture', () => {
  it.each([
    [
      { width: 4000, height: 3000 },
      { width: 1600, height: 1200 },
    ],
    [
      { width: 3000, height: 4000 },
      { width: 1200, height: 1600 },
    ],
    [
      { width: 1600, height: 900 },
      { width: 1600, height: 900 },
    ],
    [
      { width: 20, height: 10 },
      { width: 20, height: 10 },
    ],
    [
      { width: 30_000, height: 2 },
      { width: 1600, height: 1 },
    ],
  ])('makes of %o what is at most 1600 long, never larger and never nothing', (size, fitted) => {
    expect(fitPicture(size)).toEqual(fitted);
  });
});

describe('decodeOptions', () => {
  it('has a large picture made smaller on its long side while it is decoded; a small or unknown one is left', () => {
    expect(decodeOptions({ width: 9000, height: 6700 })).toMatchObject({ resizeWidth: 1600 });
    expect(decodeOptions({ width: 9000, height: 6700 })).not.toHaveProperty('resizeHeight');
    expect(decodeOptions({ width: 6700, height: 9000 })).toMatchObject({ resizeHeight: 1600 });
    for (const size of [{ width: 1600, height: 1200 }, null]) {
      expect(decodeOptions(size)).toEqual({ imageOrientation: 'from-image' });
    }
  });
});

describe('pictureKind(bytes) and pictureSize(bytes)', () => {
  it('go by the first bytes, through an EXIF part to the frame behind it', () => {
    const placed = jpegWithPlace(onePixelJpeg);
    expect(placed.includes('GPSLatitude')).toBe(true);
    expect([placed, onePixelPng, webpHead(), heicHead, programHead].map(pictureKind)).toEqual([
      'jpeg',
      'png',
      'webp',
      'heic',
      'program',
    ]);
    expect(pictureSize(placed)).toEqual({ width: 1, height: 1 });
    expect(pictureSize(webpHead(1600, 1200))).toEqual({ width: 1600, height: 1200 });
    expect(pictureSize(programHead)).toBeNull();
  });

  it('hold for every part of a picture that is cut off: a size or none, never a fault', () => {
    const placed = jpegWithPlace(onePixelJpeg);
    for (let length = 0; length < placed.length; length += 1) {
      const size = pictureSize(placed.subarray(0, length));
      if (size !== null) expect(size).toEqual({ width: 1, height: 1 });
    }
    expect(pictureSize(placed.subarray(0, 60))).toBeNull();
  });
});

describe('momentOfFile(file, earliest, now)', () => {
  const now = Date.parse('2026-05-04T12:00:00Z');
  const fileOf = (moment: string) => new File([], 'a.jpg', { lastModified: Date.parse(moment) });
  it('takes the file’s own time where it lies in the jar’s, else leaves the moment to the desk', () => {
    const started = '2026-05-01T08:00:00.000Z';
    expect(momentOfFile(fileOf('2026-05-02T09:00:00Z'), started, now)).toBe('2026-05-02T09:00:00.000Z');
    expect(momentOfFile(fileOf('2026-04-30T09:00:00Z'), started, now)).toBeUndefined();
    expect(momentOfFile(fileOf('2026-05-05T09:00:00Z'), started, now)).toBeUndefined();
  });
});
