import { readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { mostPictures } from '#shared/contract/carried-file.ts';
import { Failure } from '#shared/failure.ts';
import { pictureKind, pictureLimit_bytes } from '#shared/picture-kind.ts';
import { pictureSize } from '#shared/picture-size.ts';
import { keepPhotoFile, type Named, photoFileName, readPhotoFile, sha256Of } from '../photo-files.ts';
import type { Row } from '../tables.ts';
import type { CarriedFile } from './carried-file.ts';
import { exportedPhotos } from './export-photos.ts';

type Photo = Pick<Row<'photos'>, 'sha256' | 'format'>;

/** A file that a page reads may have 40 million characters; its rows need their share. */
const most_characters = 28_000_000;
/** Photos' files for a carried file, as base64, as many as it has room for; the others are counted. */
export function picturesFor(
  kitchen: string,
  photos: readonly Photo[],
): { readonly pictures: Map<string, string>; readonly left: number } {
  const pictures = new Map<string, string>();
  let characters = 0;
  let left = 0;
  for (const photo of photos) {
    if (pictures.has(photo.sha256)) continue;
    try {
      const text = Buffer.from(readPhotoFile(kitchen, photo)).toString('base64');
      if (characters + text.length > most_characters || pictures.size >= mostPictures) throw new Error('no room');
      characters += text.length;
      pictures.set(photo.sha256, text);
    } catch {
      left += 1;
    }
  }
  return { pictures, left };
}

/** Whether these bytes are what the row says of them: a whole picture of its kind and of its hash. */
function isAsSaid(bytes: Uint8Array, { sha256, format }: Named): boolean {
  return (
    bytes.length <= pictureLimit_bytes &&
    pictureKind(bytes) === format &&
    pictureSize(bytes) !== null &&
    sha256Of(bytes) === sha256
  );
}

/** The photos' files that came along: in the carried file itself, or in the folder of the export that it belongs to. */
export interface ArrivingPictures {
  readonly count: number;
  /** Puts them in their place, before any row speaks of them. */
  readonly keep: (kitchen: string) => void;
}

/**
 * Looks at every picture that came along with a carried file.
 *
 * @param file where the carried file lies on this machine; null when only its text came
 * @throws Failure `invalid-input` when one is not what its row says
 */
export function arrivingPictures({ rows, pictures }: CarriedFile, file: string | null): ArrivingPictures {
  const arriving: { readonly photo: Named; readonly bytes: () => Uint8Array }[] = [];
  const seen = new Set<string>();
  for (const row of rows.get('photos') ?? []) {
    const photo = { sha256: String(row.sha256), format: String(row.format) } as Named;
    if (!/^[0-9a-f]{64}$/.test(photo.sha256) || seen.has(photo.sha256)) continue;
    seen.add(photo.sha256);
    const text = pictures.get(photo.sha256);
    const beside = file === null ? null : join(dirname(file), exportedPhotos, photoFileName(photo));
    const bytes =
      text !== undefined
        ? () => new Uint8Array(Buffer.from(text, 'base64'))
        : beside !== null && statSync(beside, { throwIfNoEntry: false })?.isFile() === true
          ? () => new Uint8Array(readFileSync(beside))
          : null;
    if (bytes === null) continue;
    if (!isAsSaid(bytes(), photo)) {
      throw new Failure(
        'invalid-input',
        phrase`A picture in this file is not what its row says: ${photo.sha256.slice(0, 12)}. Nothing was taken from it.`,
        ['text', 'pictures', photo.sha256],
      );
    }
    arriving.push({ photo, bytes });
  }
  return {
    count: arriving.length,
    keep: (kitchen) => {
      for (const { photo, bytes } of arriving) keepPhotoFile(kitchen, photo, bytes());
    },
  };
}
