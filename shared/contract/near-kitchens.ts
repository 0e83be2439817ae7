import { z } from 'zod';
import { place } from './fields.ts';
import { reads } from './request.ts';

// Kitchens' files that lie near at hand, to pick one from instead of typing where it lies.

const nearKitchen = z.strictObject({
  file: z.string(),
  name: z.string(),
  bytes: z.int(),
  /** When it was last written. */
  at: z.string(),
});

export const nearKitchenRequests = {
  /**
   * The kitchens' files, other than the open one, in the folders where they mostly lie: this kitchen's, the data folder, home, desktop,
   * documents and downloads, none of their inner folders. Only looked at from outside: none is opened. The newest first; `more`: how many are
   * left out. A folder that may not be read is named. `dialog`: the host has the system's own dialog for it (`kitchens:choose`).
   */
  'kitchens:near': reads(
    z.strictObject({}),
    z.strictObject({
      dialog: z.boolean(),
      folders: z.array(
        z.strictObject({
          folder: z.string(),
          isReadable: z.boolean(),
          kitchens: z.array(nearKitchen),
          more: z.int(),
        }),
      ),
    }),
  ),
  /** Asks with the system's own dialog where a kitchen's file lies; null when nothing was chosen. Refused where there is no such dialog. */
  'kitchens:choose': reads(z.strictObject({}), z.strictObject({ file: z.string().nullable() })),
  /** Opens a kitchen that `kitchens:near` lists, as `kitchen:openBeside` does one that lies beside this. */
  'kitchen:openNear': reads(z.strictObject({ file: place }), z.strictObject({ file: z.string() })),
} as const;
