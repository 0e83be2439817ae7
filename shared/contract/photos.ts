import { z } from 'zod';
import { keptPictures, pictureLimit_bytes } from '../picture-kind.ts';
import { id, moment, note } from './fields.ts';
import { reads, writes } from './request.ts';

const owner = { jar: id.optional(), base: id.optional() };
const oneOwner = (about: { jar?: string | undefined; base?: string | undefined }) =>
  (about.jar === undefined) !== (about.base === undefined);
const oneOwnerWords = { error: 'name either the jar or the base', path: ['jar'] };

/** Base64 takes four letters for three bytes. More than that may come in, so that the desk can say in plain words that it is too large. */
const most_letters = pictureLimit_bytes * 4;

const format = z.enum(keptPictures);

/** `file`: whether the picture's file lies beside the kitchen, by its name and size. */
export const photo = z.strictObject({
  id,
  takenAt: z.string(),
  sha256: z.string(),
  format,
  width: z.int(),
  height: z.int(),
  bytes: z.int(),
  note: z.string().nullable(),
  file: z.enum(['here', 'missing', 'altered']),
});

export const photoRequests = {
  /** The picture is kept byte for byte: whoever adds it takes out what it should not tell, such as its place (the screens do). */
  'photos:add': writes(
    z
      .strictObject({
        ...owner,
        at: moment.optional(),
        image: z.string().min(1).max(most_letters),
        note: note.optional(),
      })
      .refine(oneOwner, oneOwnerWords),
    z.strictObject({ photo: id, sha256: z.string() }),
  ),
  'photos:ofJar': reads(
    z.strictObject(owner).refine(oneOwner, oneOwnerWords),
    z.strictObject({ photos: z.array(photo) }),
  ),
  /** `day`: whole days since the jar was started. */
  'photos:ofTrial': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      question: z.string(),
      isSample: z.boolean(),
      jars: z.array(z.strictObject({ id, label: z.string(), levelName: z.string(), startedAt: z.string().nullable() })),
      photos: z.array(photo.extend({ jar: id, day: z.int() })),
    }),
  ),
  'photos:read': reads(z.strictObject({ photo: id }), z.strictObject({ format, image: z.string() })),
  /** The row goes to the bin; its file stays, since a backup may show it. */
  'photos:remove': writes(z.strictObject({ photo: id }), z.strictObject({ removed: id })),
} as const;
