import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { PhotoPicture } from './photo-picture.tsx';
import { words } from './words.ts';
import './photos.css';

type Photo = ValueOf<'photos:ofJar'>['photos'][number];

/** Takes a photo out; its row goes to the bin. */
export function TakeOutPhoto({ photo, what }: { readonly photo: Photo; readonly what: string }) {
  const sayWithUndo = useSayWithUndo();
  const remove = useRequest('photos:remove');
  return (
    <Button
      weight="quiet"
      disabled={remove.isPending}
      aria-label={words.removeOf(what)}
      onClick={() => remove.mutate({ photo: photo.id }, { onSuccess: () => void sayWithUndo(words.removed) })}
    >
      {words.remove}
    </Button>
  );
}

/** The photos of one jar, the newest first. */
export function PhotoList({ jar, label }: { readonly jar: string; readonly label: string }) {
  const photos = useAnswer('photos:ofJar', { jar });
  return (
    <Answer of={photos}>
      {(value) =>
        value.photos.length === 0 ? (
          <p className="soft">{words.none}</p>
        ) : (
          <ul className="photo-list" aria-label={words.photos}>
            {value.photos.toReversed().map((photo) => {
              const what = words.of(label, dayAndTime(photo.takenAt));
              return (
                <li key={photo.id}>
                  <PhotoPicture photo={photo} what={what} />
                  <span className="small">{dayAndTime(photo.takenAt)}</span>
                  <TakeOutPhoto photo={photo} what={what} />
                </li>
              );
            })}
          </ul>
        )
      }
    </Answer>
  );
}
