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

/** Where a dropped kitchen lies; null where it is not surely one of those near at hand. */
export async function nearKitchen(file: Dropped): Promise<string | null> {
  const { folders } = await ask('kitchens:near', {});
  return sameKitchen(file, folders);
}

/** Opens a kitchen near at hand in this one's place, once everything asked before is answered. */
export async function openNear(file: string): Promise<void> {
  await ask('undo:state', {});
  await ask('kitchen:openNear', { file });
}
