import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { readingWords } from '#renderer/parts/jar-work/reading-words.ts';
import { sightingWords } from '#renderer/parts/jar-work/words.ts';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type JarPage = ValueOf<'jars:open'>;

function TakeOut({
  kind,
  id,
  at,
}: {
  readonly kind: 'reading' | 'sighting';
  readonly id: string;
  readonly at: string;
}) {
  const sayWithUndo = useSayWithUndo();
  const remove = useRequest('entries:remove');
  return (
    <Button
      weight="quiet"
      disabled={remove.isPending}
      aria-label={words.takeOutOf(kind, dayAndTime(at))}
      onClick={() => remove.mutate({ kind, id }, { onSuccess: () => void sayWithUndo(words.takenOut[kind]) })}
    >
      {words.takeOut}
    </Button>
  );
}

interface ReadingsProps {
  readonly readings: JarPage['readings'];
  readonly measures: Measures;
}

/** The jar's readings, the oldest first. */
export function Readings({ readings, measures }: ReadingsProps) {
  if (readings.length === 0) return <p className="soft">{words.noReadings}</p>;
  return (
    <RowList label={words.readings}>
      {readings.map(({ id, takenAt, note, brix, sg, ph, temperature_C, acidity_g_per_L: acid, acidityAs: as }) => {
        const said = readingWords(
          {
            ...(brix === null ? {} : { brix }),
            ...(sg === null ? {} : { sg }),
            ...(ph === null ? {} : { ph }),
            ...(temperature_C === null ? {} : { temperature_C }),
            ...(acid === null || as === null ? {} : { acidity: { g_per_L: acid, as } }),
          },
          measures,
        );
        return (
          <Row
            key={id}
            title={said}
            facts={note === null ? undefined : note}
            end={dayAndTime(takenAt)}
            actions={<TakeOut kind="reading" id={id} at={takenAt} />}
          />
        );
      })}
    </RowList>
  );
}

/** What was seen in the jar, the oldest first. */
export function Sightings({ sightings }: { readonly sightings: JarPage['sightings'] }) {
  if (sightings.length === 0) return <p className="soft">{words.noSightings}</p>;
  return (
    <RowList label={words.sightings}>
      {sightings.map(({ id, seenAt, what, note }) => (
        <Row
          key={id}
          title={what === 'other' ? (note ?? sightingWords.other) : sightingWords[what]}
          facts={what === 'other' || note === null ? undefined : note}
          end={dayAndTime(seenAt)}
          actions={<TakeOut kind="sighting" id={id} at={seenAt} />}
        />
      ))}
    </RowList>
  );
}

function score(value: number | null): string {
  return value === null ? '–' : String(value);
}

/** The maker's own tastes of this jar. */
export function Sips({ sips }: { readonly sips: JarPage['sips'] }) {
  if (sips.length === 0) return <p className="soft">{words.noSips}</p>;
  return (
    <DataTable
      caption={words.sips}
      rows={sips}
      rowKey={({ id }) => id}
      columns={[
        { head: words.when, cell: ({ takenAt }) => dayAndTime(takenAt) },
        { head: 'Tang', cell: ({ tang }) => score(tang) },
        { head: 'Fizz', cell: ({ fizz }) => score(fizz) },
        { head: 'Sweetness', cell: ({ sweetness }) => score(sweetness) },
        { head: 'Liking', cell: ({ liking }) => score(liking) },
        { head: words.note, cell: ({ note }) => note ?? '' },
      ]}
    />
  );
}
