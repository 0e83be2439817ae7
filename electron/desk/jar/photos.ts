import { hoursBetween } from '#core/trial/moment.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { type KeptPicture, pictureKind, pictureLimit_bytes, refusedPictureWords } from '#shared/picture-kind.ts';
import { pictureSize } from '#shared/picture-size.ts';
import { keepPhotoFile, readPhotoFile, sha256Of } from '#store/photo-files.ts';
import { findJar, jarsOfTrial } from '#store/rows/jars.ts';
import { photosOf, photosOfTrial } from '#store/rows/photos.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { entryPlace, entryTime } from './entry-place.ts';

interface Picture {
  readonly bytes: Uint8Array;
  readonly format: KeptPicture;
  readonly width: number;
  readonly height: number;
}

/** What came, looked at: only a whole header of a kept kind passes, whatever the caller calls it. */
function pictureFrom(image: string): Picture {
  const path = ['image'];
  const tooLarge = new Failure('refused', phrase`A picture may have up to 8 MB.`, path);
  if (image.length > Math.ceil(pictureLimit_bytes / 3) * 4) throw tooLarge;
  if (image.length % 4 !== 0 || !/^[A-Za-z0-9+/]+={0,2}$/.test(image)) {
    throw new Failure('invalid-input', phrase`The picture must come as base64, without spaces.`, path);
  }
  const bytes = new Uint8Array(Buffer.from(image, 'base64'));
  const kind = pictureKind(bytes);
  if (kind !== 'jpeg' && kind !== 'png' && kind !== 'webp') {
    throw new Failure('refused', refusedPictureWords[kind], path);
  }
  if (bytes.length > pictureLimit_bytes) throw tooLarge;
  const size = pictureSize(bytes);
  if (size === null) {
    throw new Failure(
      'refused',
      phrase`This picture is cut off or damaged: its size can’t be read. Nothing was added.`,
      path,
    );
  }
  return { bytes, format: kind, ...size };
}

export const photoHandlers: Handlers<
  'photos:add' | 'photos:ofJar' | 'photos:ofTrial' | 'photos:read' | 'photos:remove'
> = {
  'photos:add'(kitchen, input) {
    const { bytes, ...picture } = pictureFrom(input.image);
    const at = entryTime(kitchen, input.at);
    const place = entryPlace(kitchen, input, at);
    const sha256 = sha256Of(bytes);
    const { jar_id, base_id } = place.columns;
    const again = kitchen.read.one<{ id: string }>(
      jar_id === null
        ? 'SELECT id FROM photos WHERE base_id = ? AND sha256 = ?'
        : 'SELECT id FROM photos WHERE jar_id = ? AND sha256 = ?',
      jar_id ?? base_id,
      sha256,
    );
    if (again !== undefined)
      throw new Failure('refused', phrase`This very picture is with ${place.words} already.`, ['image']);
    kitchen.assertThere();
    keepPhotoFile(kitchen.file, { sha256, format: picture.format }, bytes);
    return kitchen.write({ request: 'photos:add', summary: phrase`Add a photo of ${place.words}` }, (writer) => ({
      photo: writer.insert('photos', {
        ...place.columns,
        taken_at: at,
        sha256,
        ...picture,
        bytes: bytes.length,
        note: input.note ?? null,
      }).id,
      sha256,
    }));
  },
  'photos:ofJar'(kitchen, { jar, base }) {
    if (jar !== undefined) {
      found(findJar(kitchen.read, jar), 'jar', 'jar');
      return { photos: photosOf(kitchen, 'jar_id', jar) };
    }
    const row = found(kitchen.read.row('bases', base ?? ''), 'base', 'base');
    return { photos: photosOf(kitchen, 'base_id', row.id) };
  },
  'photos:ofTrial'(kitchen, { trial }) {
    const row = found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const jars = jarsOfTrial(kitchen.read, trial);
    const starts = new Map(jars.map(({ id, startedAt }) => [id, startedAt]));
    return {
      question: row.question,
      isSample: row.is_sample === 1,
      jars: jars.map(({ id, label, levelName, startedAt }) => ({ id, label, levelName, startedAt })),
      photos: photosOfTrial(kitchen, trial).map((photo) => ({
        ...photo,
        // A jar whose start was undone keeps its photos: they stand on their first day.
        day: Math.max(0, Math.floor(hoursBetween(starts.get(photo.jar) ?? photo.takenAt, photo.takenAt) / 24)),
      })),
    };
  },
  'photos:read'(kitchen, { photo }) {
    const row = found(kitchen.read.row('photos', photo), 'photo', 'photo');
    const bytes = readPhotoFile(kitchen.file, row);
    return { format: row.format as KeptPicture, image: Buffer.from(bytes).toString('base64') };
  },
  'photos:remove'(kitchen, { photo }) {
    const row = found(kitchen.read.row('photos', photo), 'photo', 'photo');
    const label = row.jar_id === null ? undefined : findJar(kitchen.read, row.jar_id)?.label;
    const of = label === undefined ? phrase`the base` : phrase`jar ${label}`;
    return kitchen.write({ request: 'photos:remove', summary: phrase`Remove a photo of ${of}` }, (writer) => {
      writer.remove('photos', photo);
      return { removed: photo };
    });
  },
};
