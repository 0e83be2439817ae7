import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { CorrectSighting } from '#renderer/parts/jar-work/correct-sighting.tsx';
import { readingWords } from '#renderer/parts/jar-work/reading-words.ts';
import { sightingSaid } from '#renderer/parts/jar-work/sighting-said.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Base = ValueOf<'bases:open'>;

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

function said(reading: Base['readings'][number], measures: Measures): string {
  const { brix, sg, ph, temperature_C, acidity_g_per_L: acid, acidityAs: as } = reading;
  return readingWords(
    {
      ...(brix === null ? {} : { brix }),
      ...(sg === null ? {} : { sg }),
      ...(ph === null ? {} : { ph }),
      ...(temperature_C === null ? {} : { temperature_C }),
      ...(acid === null || as === null ? {} : { acidity: { g_per_L: acid, as } }),
    },
    measures,
  );
}

/** The base's readings, the newest first. */
export function BaseReadings({ base, measures }: { readonly base: Base; readonly measures: Measures }) {
  if (base.readings.length === 0)
    return (
      <p className="soft">
        <Explained words={words.noReadings} />
      </p>
    );
  return (
    <RowList label={words.readings}>
      {base.readings.toReversed().map((reading) => (
        <Row
          key={reading.id}
          title={said(reading, measures)}
          facts={reading.note ?? undefined}
          end={dayAndTime(reading.takenAt)}
          actions={<TakeOutReading id={reading.id} at={reading.takenAt} />}
        />
      ))}
    </RowList>
  );
}

/** What was seen in the base, the newest first. */
export function BaseSightings({ base }: { readonly base: Base }) {
  if (base.sightings.length === 0)
    return (
      <p className="soft">
        <Explained words={words.noSightings} />
      </p>
    );
  return (
    <RowList label={words.sightings}>
      {base.sightings.toReversed().map((sighting) => {
        const { title, note } = sightingSaid(sighting);
        return (
          <Row
            key={sighting.id}
            title={title}
            facts={note ?? undefined}
            end={dayAndTime(sighting.seenAt)}
            actions={sighting.correctedAt === null ? <CorrectSighting sighting={sighting} /> : undefined}
          />
        );
      })}
    </RowList>
  );
}
