import { pictureKind } from './picture-kind.ts';

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

function fitting(width: number, height: number): PictureSize | null {
  return width >= 1 && height >= 1 && width <= 65_535 && height <= 65_535 ? { width, height } : null;
}

/** Frame headers of JPEG, but for the three marks of that range that are none. */
function isFrame(mark: number): boolean {
  return mark >= 0xc0 && mark <= 0xcf && mark !== 0xc4 && mark !== 0xc8 && mark !== 0xcc;
}

function jpegSize(view: DataView): PictureSize | null {
  let at = 2;
  while (at + 9 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const mark = view.getUint8(at + 1);
    if (mark === 0xff) {
      at += 1;
    } else if (isFrame(mark)) {
      return fitting(view.getUint16(at + 7), view.getUint16(at + 5));
    } else {
      const length = view.getUint16(at + 2);
      // The end, the picture's own data, or a part of no length: no frame came before.
      if (mark === 0xd9 || mark === 0xda || length < 2) return null;
      at += 2 + length;
    }
  }
  return null;
}

function pngSize(view: DataView): PictureSize | null {
  const isHeader = view.byteLength >= 24 && view.getUint32(12) === 0x49_48_44_52;
  return isHeader ? fitting(view.getUint32(16), view.getUint32(20)) : null;
}

function uint24(view: DataView, at: number): number {
  return view.getUint16(at, true) + view.getUint8(at + 2) * 65_536;
}

function webpSize(view: DataView): PictureSize | null {
  if (view.byteLength < 30) return null;
  switch (view.getUint32(12)) {
    // "VP8X", "VP8L", "VP8 "
    case 0x56_50_38_58:
      return fitting(uint24(view, 24) + 1, uint24(view, 27) + 1);
    case 0x56_50_38_4c: {
      const bits = view.getUint32(21, true);
      return view.getUint8(20) === 0x2f ? fitting((bits & 0x3fff) + 1, ((bits >>> 14) & 0x3fff) + 1) : null;
    }
    case 0x56_50_38_20:
      return uint24(view, 23) === 0x2a_01_9d
        ? fitting(view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff)
        : null;
    default:
      return null;
  }
}

/**
 * Width and height of a JPEG, PNG or WebP as its own header states them, before any turning by its orientation.
 *
 * Leaves out whether the picture's data are whole.
 *
 * @param bytes the file; its first part will do if the header lies in it
 * @returns pixels, each 1–65535; null for other files and where no header is found
 * Source: JPEG: ITU-T T.81 B.2.2; PNG: W3C PNG specification 11.2.1; WebP: RFC 9649 2.5–2.7 and RFC 6386 9.1
 * @example pictureSize(bytes) // { width: 1600, height: 1200 }
 */
export function pictureSize(bytes: Uint8Array): PictureSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kind = pictureKind(bytes);
  if (kind === 'jpeg') return jpegSize(view);
  if (kind === 'png') return pngSize(view);
  return kind === 'webp' ? webpSize(view) : null;
}
