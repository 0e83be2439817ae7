import { factorWords } from '#core/trial/factor.ts';
import { attributesInOrder } from '#renderer/charts/attribute-colour.ts';
import { factorChartData } from '#renderer/charts/factor-chart-data.ts';
import { placeChartData } from '#renderer/charts/place-chart-data.ts';
import { PlaceDrawing } from '#renderer/charts/place-drawing.tsx';
import { glued } from '#renderer/format/glued.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { capital, joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { axisWords } from './axis-words.ts';
import { heldWords, stoodWords } from './held-words.ts';
import { MeansTable } from './means-table.tsx';
import { ReportChart } from './report-charts.tsx';
import { words } from './words.ts';

type Findings = ValueOf<'findings:read'>;

interface ReportSheetProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly findings: Findings;
  readonly rankings: ValueOf<'findings:places'>['rankings'];
}

/** So many charts beside that of liking keep readable on one page. */
const mostSmall = 6;

/** The answer with its doubt: of the scores where there are any, else of the rankings. */
function Answers({ findings, rankings }: Pick<ReportSheetProps, 'findings' | 'rankings'>) {
  const { headline } = findings;
  const aside = findings.tasters.filter(({ setAside }) => setAside !== null);
  return (
    <section className="report-answer">
      {headline === null ? null : <p className="report-headline">{glued(headline.sentence)}</p>}
      {headline?.sureness == null ? null : <p>{glued(headline.sureness)}</p>}
      {headline?.also == null ? null : (
        <p>
          {words.alsoShown}: {glued(headline.also)}
        </p>
      )}
      {rankings.map((ranking, place) => (
        <p key={ranking.tasting} className={headline === null && place === 0 ? 'report-headline' : undefined}>
          {ranking.sentence} {ranking.ordered}
        </p>
      ))}
      <ul className="report-doubts">
        {[...(headline?.doubts ?? []), ...rankings.flatMap(({ doubts }) => doubts)].map((doubt) => (
          <li key={doubt}>{glued(doubt)}</li>
        ))}
        {findings.takenOut.map(({ tasting, jar, sentence }) => (
          <li key={`${tasting} ${jar}`}>{sentence}</li>
        ))}
        {aside.length === 0 ? null : (
          <li>{words.aside(joined(aside.map(({ name, setAside }) => `${name} (${setAside})`)))}</li>
        )}
      </ul>
    </section>
  );
}

/** Everything of the report, to be set into one sheet. */
export function ReportSheet({ trial, findings, rankings }: ReportSheetProps) {
  const measures = useMeasures();
  const levels = trial.levelsWhole.map(({ name }) => name);
  const scored = attributesInOrder([...new Set(findings.scores.map(({ attribute }) => attribute))]);
  const charts = scored.map((attribute) => factorChartData(findings, attribute, levels, { factor: trial.factor }));
  const liking = charts.filter(({ attribute }) => attribute === findings.liking);
  const others = charts.filter(({ attribute }) => attribute !== findings.liking);
  const winner = findings.headline?.winner ?? null;
  const tasters = new Set(findings.scores.map(({ taster }) => taster)).size;
  const drawn = (data: (typeof charts)[number], isLead: boolean) => (
    <ReportChart
      key={data.attribute}
      data={data}
      axis={axisWords[trial.factor]}
      winner={isLead ? (winner?.level ?? null) : null}
      sentence={findings.sentences.find((one) => one.attribute === data.attribute)?.sentence ?? null}
      isLead={isLead}
    />
  );
  return (
    <>
      <header>
        <h2>{trial.question}</h2>
        <p className="report-small">
          {words.ofTrial(
            capital(factorWords[trial.factor]),
            trial.jars,
            findings.tastings,
            tasters,
            findings.scores.length,
          )}
        </p>
      </header>
      <Answers findings={findings} rankings={rankings} />
      <div className="report-leads">
        <div>
          {liking.map((data) => drawn(data, true))}
          {liking.length > 0
            ? null
            : rankings.slice(0, 1).map((ranking) => (
                <figure key={ranking.tasting} className="report-chart is-lead">
                  <figcaption>
                    <h3>{ranking.name}</h3>
                  </figcaption>
                  <div className="report-drawing chart">
                    <PlaceDrawing data={placeChartData(ranking)} />
                  </div>
                </figure>
              ))}
        </div>
        <div className="report-held">
          <h3>{words.jars}</h3>
          <ul className={trial.jarsWhole.length > 8 ? 'is-many' : undefined}>
            {trial.jarsWhole.map((jar) => (
              <li key={jar.id}>
                <b>{words.jar(jar.label, jar.levelName, jar.isControl)}</b> {stoodWords(jar)}
              </li>
            ))}
          </ul>
          <h3>{words.held}</h3>
          <p>{heldWords(trial, measures)}</p>
        </div>
      </div>
      {others.length === 0 ? null : (
        <div className="report-charts">{others.slice(0, mostSmall).map((data) => drawn(data, false))}</div>
      )}
      {charts.length === 0 ? null : (
        <>
          <p className="report-small">
            {words.chartNote}{' '}
            {others.length <= mostSmall
              ? null
              : words.notDrawn(joined(others.slice(mostSmall).map(({ attribute }) => attribute)))}
          </p>
          <MeansTable charts={[...liking, ...others]} levels={levels} />
        </>
      )}
    </>
  );
}
