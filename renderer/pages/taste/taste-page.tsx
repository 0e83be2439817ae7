import { useAnswer } from '#renderer/app/use-answer.ts';
import { counted } from '#renderer/format/counted.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { TrialHead } from '#renderer/parts/trial-head/trial-head.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { canBeTasted } from './jar-choice.tsx';
import { TrialSips } from './trial-sips.tsx';
import { words } from './words.ts';

function TastingRows({ tastings }: { readonly tastings: ValueOf<'tastings:list'>['tastings'] }) {
  if (tastings.length === 0)
    return (
      <p className="soft">
        <Explained words={words.none} />
      </p>
    );
  return (
    <RowList label={words.tastings}>
      {tastings.map((tasting) => (
        <Row
          key={tasting.id}
          title={tasting.name}
          to={`/tastings/${tasting.id}`}
          marks={<SampleMark when={tasting.isSample} />}
          facts={
            <>
              <span>{tasting.closedAt === null ? words.open : words.closed}</span>{' '}
              <span>{counted(tasting.samples, 'sample')}</span> <span>{counted(tasting.tasters, 'taster')}</span>{' '}
              <span>{dayAndTime(tasting.heldAt)}</span>
            </>
          }
          end={(tasting.isRanked ? words.ofPlaces : words.ofExpected)(tasting.scores, tasting.expected)}
        />
      ))}
    </RowList>
  );
}

/** The Taste step of a trial: its tastings, and the maker's own sips. */
export function TastePage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  const tastings = useAnswer('tastings:list', { trial: id });
  return (
    <Answer of={trial}>
      {(value) => {
        const jars = value.jarsWhole.filter(canBeTasted);
        return (
          <>
            <TrialHead trial={value} step="taste" />
            <section className="section">
              <h2>
                <Explained words={words.tastings} />
              </h2>
              <Answer of={tastings}>{({ tastings: all }) => <TastingRows tastings={all} />}</Answer>
              {jars.length === 0 ? (
                <p className="soft">
                  <Explained words={words.noJars} />
                </p>
              ) : (
                <div className="button-row">
                  <ButtonLink to={`/trials/${id}/taste/new`} weight="main">
                    {words.build}
                  </ButtonLink>
                  <ButtonLink to={`/trials/${id}/taste/alone`}>{words.alone}</ButtonLink>
                </div>
              )}
            </section>
            {jars.length === 0 ? null : <TrialSips trial={id} jars={jars} />}
          </>
        );
      }}
    </Answer>
  );
}
