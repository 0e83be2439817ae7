import type { ValueOf } from '#shared/contract/all-requests.ts';
import { ask } from './ask.ts';

type Folder = ValueOf<'kitchens:near'>['folders'][number];
type Dropped = Pick<File, 'name' | 'size' | 'lastModified'>;

/** File systems and pages round a file's time differently. */
const apart_ms = 2000;

/** Which of the kitchens near at hand a dropped file is: a page is told its name, size and time, not where it lies. Null for none, or several. */
export function sameKitchen({ name, size, lastModified }: Dropped, folders: readonly Folder[]): string | null {
  const same = folders
    .flatMap(({ kitchens }) => kitchens)
    .filter((one) => one.name === name && one.bytes === size && Math.abs(Date.parse(one.at) - lastModified) < apart_ms);
  return same.length === 1 ? (same[0]?.file ?? null) : null;
}

/**
 * Opens a kitchen that was dropped on a page which is not told where its file lies.
 *
 * @returns whether it was found near at hand
 * @throws Failure where it was found and can't be opened
 */
export async function openDroppedKitchen(file: Dropped): Promise<boolean> {
  const { folders } = await ask('kitchens:near', {});
  const place = sameKitchen(file, folders);
  if (place === null) return false;
  await ask('kitchen:openNear', { file: place });
  return true;
}
