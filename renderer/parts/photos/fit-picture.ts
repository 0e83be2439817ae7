/** The long side that photos are kept at, in pixels. */
export const longSide_px = 1600;

interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * The size at which a picture is kept: its form, its long side at most 1600 pixels, never enlarged.
 *
 * @example fitPicture({ width: 4000, height: 3000 }) // { width: 1600, height: 1200 }
 */
export function fitPicture({ width, height }: Size): Size {
  const share = Math.min(1, longSide_px / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * share)), height: Math.max(1, Math.round(height * share)) };
}

/**
 * What the decoder is asked for, so that a large picture never stands in memory whole.
 *
 * @param size as the header states it; null where the header can't be read, and the picture is decoded as it is
 */
export function decodeOptions(size: Size | null): ImageBitmapOptions {
  const turned: ImageBitmapOptions = { imageOrientation: 'from-image' };
  if (size === null || Math.max(size.width, size.height) <= longSide_px) return turned;
  const side = size.width >= size.height ? { resizeWidth: longSide_px } : { resizeHeight: longSide_px };
  return { ...turned, ...side, resizeQuality: 'high' };
}
