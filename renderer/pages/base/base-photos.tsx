import { useAnswer } from '#renderer/app/use-answer.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { PhotoEntry } from '#renderer/parts/photos/photo-entry.tsx';
import { PhotoPicture } from '#renderer/parts/photos/photo-picture.tsx';
import { TakeOutPhoto } from '#renderer/parts/photos/take-out-photo.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

/** The base's photos, the newest first, and where more are added. */
export function BasePhotos({ base }: { readonly base: ValueOf<'bases:open'> }) {
  const photos = useAnswer('photos:ofJar', { base: base.id }).data?.photos ?? [];
  return (
    <section className="section">
      <h2>
        <Explained words={words.photos} />
      </h2>
      <PhotoEntry owner={{ base: base.id }} earliest={base.madeAt} />
      {photos.length === 0 ? null : (
        <RowList label={words.photos}>
          {photos.toReversed().map((photo) => {
            const what = words.photoOf(base.name, dayAndTime(photo.takenAt));
            return (
              <Row
                key={photo.id}
                title={<PhotoPicture photo={photo} what={what} />}
                facts={photo.note ?? undefined}
                end={dayAndTime(photo.takenAt)}
                actions={<TakeOutPhoto photo={photo} what={what} />}
              />
            );
          })}
        </RowList>
      )}
    </section>
  );
}
