import type { ReactNode } from 'react';
import { shownNumber } from '#core/words/figures.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { CorrectSighting } from '#renderer/parts/jar-work/correct-sighting.tsx';
import { readingWords } from '#renderer/parts/jar-work/reading-words.ts';
import { sightingSaid } from '#renderer/parts/jar-work/sighting-said.tsx';
import { PhotoPicture } from '#renderer/parts/photos/photo-picture.tsx';
import { TakeOutPhoto } from '#renderer/parts/photos/take-out-photo.tsx';
import { words as photoWords } from '#renderer/parts/photos/words.ts';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type JarPage = ValueOf<'jars:open'>;
type Photo = ValueOf<'photos:ofJar'>['photos'][number];

function TakeOutReading({ id, at }: { readonly id: string; readonly at: string }) {
  const sayWithUndo = useSayWithUndo();
  const remove = useRequest('entries:remove');
  return (
    <Button
      weight="quiet"
      disabled={remove.isPending}
      aria-label={words.takeOutOf(dayAndTime(at))}
      onClick={() => remove.mutate({ kind: 'reading', id }, { onSuccess: () => void sayWithUndo(words.takenOut) })}
    >
      {words.takeOut}
    </Button>
  );
}

interface Entry {
  readonly id: string;
  readonly at: string;
  readonly title: ReactNode;
  readonly note: string | null;
  readonly actions?: ReactNode;
}

function readingEntry(reading: JarPage['readings'][number], measures: Measures): Entry {
  const { id, takenAt, note, brix, sg, ph, temperature_C, acidity_g_per_L: acid, acidityAs: as } = reading;
  const title = readingWords(
    {
      ...(brix === null ? {} : { brix }),
      ...(sg === null ? {} : { sg }),
      ...(ph === null ? {} : { ph }),
      ...(temperature_C === null ? {} : { temperature_C }),
      ...(acid === null || as === null ? {} : { acidity: { g_per_L: acid, as } }),
    },
    measures,
  );
  return { id, at: takenAt, title, note, actions: <TakeOutReading id={id} at={takenAt} /> };
}

function sightingEntry(sighting: JarPage['sightings'][number]): Entry {
  const { id, seenAt, correctedAt } = sighting;
  const said = sightingSaid(sighting);
  return correctedAt === null
    ? { id, at: seenAt, ...said, actions: <CorrectSighting sighting={sighting} /> }
    : { id, at: seenAt, ...said };
}

function sipEntry({ id, takenAt, note, ...sip }: JarPage['sips'][number]): Entry {
  const said = (['tang', 'fizz', 'sweetness', 'liking'] as const).flatMap((name) =>
    sip[name] === null ? [] : [`${name} ${shownNumber(sip[name])}`],
  );
  return { id, at: takenAt, title: words.sip(said.join(', ')), note };
}

function photoEntry(photo: Photo, label: string): Entry {
  const what = photoWords.of(label, dayAndTime(photo.takenAt));
  return {
    id: photo.id,
    at: photo.takenAt,
    title: (
      <span className="diary-photo">
        <PhotoPicture photo={photo} what={what} />
      </span>
    ),
    note: photo.note,
    actions: <TakeOutPhoto photo={photo} what={what} />,
  };
}

interface DiaryProps {
  readonly whole: JarPage;
  readonly measures: Measures;
}

/** Readings, sightings, sips and photos of one jar in one line of time, the newest first. */
export function Diary({ whole, measures }: DiaryProps) {
  const photos = useAnswer('photos:ofJar', { jar: whole.jar.id });
  const entries = [
    ...whole.readings.map((reading) => readingEntry(reading, measures)),
    ...whole.sightings.map(sightingEntry),
    ...whole.sips.map(sipEntry),
    ...(photos.data?.photos ?? []).map((photo) => photoEntry(photo, whole.jar.label)),
  ].toSorted((one, other) => other.at.localeCompare(one.at));
  if (entries.length === 0)
    return (
      <p className="soft">
        <Explained words={words.noEntries} />
      </p>
    );
  return (
    <RowList label={words.diary}>
      {entries.map(({ id, at, title, note, actions }) => (
        <Row
          key={id}
          title={title}
          facts={note === null ? undefined : note}
          end={words.whenInJar(dayAndTime(at), whole.jar.startedAt, at)}
          actions={actions}
        />
      ))}
    </RowList>
  );
}
