import { pictureKind } from '#shared/picture-kind.ts';
import { pictureSize } from '#shared/picture-size.ts';
import { decodeOptions, fitPicture } from './fit-picture.ts';
import type { PictureFault } from './words.ts';

const largest_bytes = 100 * 1024 * 1024;
/** Headers with large previews before the frame: a megabyte has held all that we met (common practice, no source). */
const head_bytes = 1024 * 1024;
const quality = 0.85;

export type PreparedPicture =
  | { readonly kind: 'picture'; readonly jpeg: Blob }
  | { readonly kind: 'fault'; readonly why: PictureFault };

async function decoded(file: Blob, options: ImageBitmapOptions): Promise<ImageBitmap | null> {
  try {
    return await createImageBitmap(file, options);
  } catch {
    return null;
  }
}

/** The picture drawn anew and encoded as JPEG: nothing of the file but its pixels comes along. */
async function encoded(bitmap: ImageBitmap): Promise<Blob | null> {
  const { width, height } = fitPicture(bitmap);
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d');
  if (pen === null) return null;
  // Where a picture is see-through, JPEG would be black.
  pen.fillStyle = 'white';
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(bitmap, 0, 0, width, height);
  try {
    return await canvas.convertToBlob({ type: 'image/jpeg', quality });
  } catch {
    return null;
  }
}

/**
 * Makes a photo of a file: decoded by the browser, at most 1600 pixels long, encoded anew as JPEG.
 *
 * Drawings and programs are refused by their first bytes; all else is the decoder's to refuse.
 */
export async function preparePicture(file: Blob): Promise<PreparedPicture> {
  if (file.size > largest_bytes) return { kind: 'fault', why: 'too-large' };
  let head: Uint8Array;
  try {
    head = new Uint8Array(await file.slice(0, head_bytes).arrayBuffer());
  } catch {
    return { kind: 'fault', why: 'undecoded' };
  }
  const kind = pictureKind(head);
  if (kind === 'drawing' || kind === 'program') return { kind: 'fault', why: kind };
  const bitmap = await decoded(file, decodeOptions(pictureSize(head)));
  if (bitmap === null) return { kind: 'fault', why: kind === 'heic' || kind === 'other' ? kind : 'undecoded' };
  try {
    const jpeg = await encoded(bitmap);
    return jpeg === null ? { kind: 'fault', why: 'unencoded' } : { kind: 'picture', jpeg };
  } finally {
    bitmap.close();
  }
}

/** A blob as base64, as the desk takes pictures. */
export function base64Of(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^data:[^,]*,/, ''));
    reader.onerror = () => reject(new Error('The picture could not be read.'));
    reader.readAsDataURL(blob);
  });
}
