import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { timeWords } from '#renderer/format/moments.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { PhotoPicture } from '#renderer/parts/photos/photo-picture.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Whole = ValueOf<'photos:ofTrial'>;

/** Jars down, days across: a photo stands where its jar and its day meet. */
function Strip({ jars, photos }: Whole) {
  const days = [...new Set(photos.map(({ day }) => day))].toSorted((a, b) => a - b);
  return (
    <div className="photo-strip">
      <DataTable
        caption={words.title}
        rows={jars}
        rowKey={({ id }) => id}
        columns={[
          {
            head: words.jar,
            cell: ({ id, label, levelName }) => (
              <>
                <Link href={`/jars/${id}`}>{label}</Link>
                <br />
                <span className="soft small">{levelName}</span>
              </>
            ),
          },
          ...days.map((day) => ({
            head: words.day(day),
            cell: ({ id, label, levelName }: Whole['jars'][number]) =>
              photos
                .filter((photo) => photo.jar === id && photo.day === day)
                .map((photo) => (
                  <div key={photo.id}>
                    <PhotoPicture photo={photo} what={words.what(label, levelName, day)} />
                    <span className="soft small">{timeWords(photo.takenAt)}</span>
                  </div>
                )),
          })),
        ]}
      />
    </div>
  );
}

/** The photos of all jars of a trial, side by side by day. */
export function PhotosPage({ id }: { readonly id: string }) {
  const photos = useAnswer('photos:ofTrial', { trial: id });
  if (photos.error?.code === 'not-found') {
    return (
      <EmptyState title={words.gone.title} actions={<ButtonLink to="/trials">{words.gone.back}</ButtonLink>}>
        <p>
          <Explained words={words.gone.line} />
        </p>
      </EmptyState>
    );
  }
  return (
    <Answer of={photos}>
      {(whole) => (
        <>
          <PageHead
            above={
              <>
                <Link href={`/trials/${id}`}>{whole.question}</Link>
                <SampleMark when={whole.isSample} />
              </>
            }
            title={words.title}
            lead={words.lead}
          />
          {whole.photos.length === 0 ? (
            <EmptyState
              title={words.none.title}
              actions={<ButtonLink to={`/trials/${id}`}>{words.none.back}</ButtonLink>}
            >
              <p>
                <Explained words={words.none.line} />
              </p>
            </EmptyState>
          ) : (
            <Strip {...whole} />
          )}
        </>
      )}
    </Answer>
  );
}
