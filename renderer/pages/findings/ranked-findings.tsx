import { PlaceChart } from '#renderer/charts/place-chart.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Ranking = ValueOf<'findings:places'>['rankings'][number];

interface RankedFindingsProps {
  readonly trial: string;
  readonly rankings: readonly Ranking[];
  /** True where no scored tasting has the first word. */
  readonly isAnswer: boolean;
}

function RankedFinding({ ranking, isAnswer }: { readonly ranking: Ranking; readonly isAnswer: boolean }) {
  return (
    <section className="section headline" aria-label={words.rankedWhich(ranking.name)}>
      <h2>
        <Explained words={words.rankedWhich(ranking.name)} />
      </h2>
      <p className={isAnswer ? 'headline-sentence' : undefined}>{ranking.sentence}</p>
      {ranking.ordered === null ? null : <p>{ranking.ordered}</p>}
      {ranking.withEverybody === null ? null : <p>{words.withEverybody(ranking.withEverybody)}</p>}
      {ranking.doubts.length === 0 ? null : (
        <div>
          <h3>
            <Explained words={words.doubts} />
          </h3>
          <ul className="headline-doubts">
            {ranking.doubts.map((doubt) => (
              <li key={doubt}>{doubt}</li>
            ))}
          </ul>
        </div>
      )}
      <PlaceChart ranking={ranking} />
      {ranking.test === null ? null : (
        <p className="soft small">
          <Explained words={words.rankedTest(ranking.test, ranking.criticalDifference, ranking.criticalIsExact)} />
          {ranking.page === null ? null : (
            <>
              {' '}
              <Explained words={words.pageTest(ranking.page)} />
            </>
          )}
        </p>
      )}
    </section>
  );
}

/** What the tastings say that put the jars in order. */
export function RankedFindings({ trial, rankings, isAnswer }: RankedFindingsProps) {
  return (
    <>
      {rankings.map((ranking) => (
        <RankedFinding key={ranking.tasting} ranking={ranking} isAnswer={isAnswer} />
      ))}
      {isAnswer && rankings.length > 0 ? (
        <div className="button-row no-print">
          <ButtonLink to={`/trials/${trial}/promote`}>{words.promoteAny}</ButtonLink>
          <ButtonLink to={`/trials/${trial}/report`}>{words.toReport}</ButtonLink>
        </div>
      ) : null}
    </>
  );
}
