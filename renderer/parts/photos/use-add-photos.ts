import { useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { Failure } from '#shared/failure.ts';
import { base64Of, preparePicture } from './prepare-picture.ts';
import { pictureFaultWords, words } from './words.ts';

export type PhotoOwner = { readonly jar: string } | { readonly base: string };

/** A camera's file knows when it was written; one from before the jar, or from the future, is taken as of now. */
export function momentOfFile(file: File, earliest: string, now: number): string | undefined {
  const written = file.lastModified;
  return written >= Date.parse(earliest) && written < now - 60_000 ? new Date(written).toISOString() : undefined;
}

export interface AddPhotos {
  /** What is under way, in words; null when nothing is. */
  readonly doing: string | null;
  /** Each file that did not become a photo, and why. */
  readonly faults: readonly string[];
  add(files: readonly File[]): Promise<void>;
}

/** Adds pictures one after the other; each that can't be added says why, and the others are added still. */
export function useAddPhotos(owner: PhotoOwner, earliest: string): AddPhotos {
  const [doing, setDoing] = useState<string | null>(null);
  const [faults, setFaults] = useState<readonly string[]>([]);
  const sayWithUndo = useSayWithUndo();
  const { mutateAsync } = useRequest('photos:add', { showsFailure: true });

  async function addOne(file: File): Promise<string | null> {
    const prepared = await preparePicture(file);
    if (prepared.kind === 'fault') return pictureFaultWords[prepared.why];
    try {
      const at = momentOfFile(file, earliest, Date.now());
      await mutateAsync({ ...owner, image: await base64Of(prepared.jpeg), ...(at === undefined ? {} : { at }) });
      return null;
    } catch (error) {
      return error instanceof Failure ? error.message : pictureFaultWords.undecoded;
    }
  }

  async function add(files: readonly File[]) {
    if (files.length === 0 || doing !== null) return;
    setFaults([]);
    let added = 0;
    for (const file of files) {
      const name = file.name === '' ? words.pasted : file.name;
      setDoing(words.adding(name));
      const fault = await addOne(file);
      if (fault === null) added += 1;
      else setFaults((all) => [...all, words.refused(name, fault)]);
    }
    setDoing(null);
    if (added > 0) void sayWithUndo(words.added(added));
  }

  return { doing, faults, add };
}
