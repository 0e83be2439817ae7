import { useEffect, useState } from 'react';
import { ask } from '#renderer/app/ask.ts';
import { Failure } from '#shared/failure.ts';

// A photo never changes, so it is read once, however often lists are read again; the oldest are let go.

const most = 240;
const kept = new Map<string, Promise<string>>();

async function addressOf(photo: string): Promise<string> {
  const { format, image } = await ask('photos:read', { photo });
  const bytes = Uint8Array.from(atob(image), (letter) => letter.charCodeAt(0));
  return URL.createObjectURL(new Blob([bytes], { type: `image/${format}` }));
}

function keptAddress(photo: string): Promise<string> {
  const known = kept.get(photo);
  if (known !== undefined) return known;
  const address = addressOf(photo);
  kept.set(photo, address);
  address.catch(() => kept.delete(photo));
  const [oldest] = kept;
  if (kept.size > most && oldest !== undefined) {
    kept.delete(oldest[0]);
    void oldest[1].then((old) => URL.revokeObjectURL(old)).catch(() => undefined);
  }
  return address;
}

export type Picture =
  | { readonly state: 'loading' }
  | { readonly state: 'shown'; readonly address: string }
  | { readonly state: 'fault'; readonly words: string };

/** A photo's picture to show; `isWanted` false: not read yet. */
export function usePicture(photo: string, isWanted: boolean): Picture {
  const [picture, setPicture] = useState<Picture>({ state: 'loading' });
  useEffect(() => {
    if (!isWanted) return;
    let isHere = true;
    keptAddress(photo).then(
      (address) => isHere && setPicture({ state: 'shown', address }),
      (error: unknown) =>
        isHere && setPicture({ state: 'fault', words: error instanceof Failure ? error.message : String(error) }),
    );
    return () => {
      isHere = false;
    };
  }, [photo, isWanted]);
  return picture;
}
