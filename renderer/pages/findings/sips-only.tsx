import { FactorChart } from '#renderer/charts/factor-chart.tsx';
import { type FactorChartData, factorChartData } from '#renderer/charts/factor-chart-data.ts';
import { FactorChartLegend } from '#renderer/charts/factor-chart-legend.tsx';
import { type Sip, sippedAttributes } from '#renderer/charts/sip-marks.ts';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { axisWords, words } from './words.ts';

interface SipsOnlyProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly findings: ValueOf<'findings:read'>;
  readonly sips: readonly Sip[];
  readonly open: ValueOf<'tastings:list'>['tastings'];
}

/** Before a tasting is closed: the way to it, and the maker's own sips if there are any. */
export function SipsOnly({ trial, findings, sips, open }: SipsOnlyProps) {
  const levels = trial.levelsWhole.map(({ name }) => name);
  const charts: FactorChartData[] = sippedAttributes(sips).map((attribute) =>
    factorChartData(findings, attribute, levels, { factor: trial.factor, sips }),
  );
  return (
    <>
      <EmptyState
        title={words.noTasting}
        actions={
          <>
            <ButtonLink to={`/trials/${trial.id}/taste`} weight="main">
              {words.toTaste}
            </ButtonLink>
            <ButtonLink to={`/trials/${trial.id}/promote`}>{words.promoteAny}</ButtonLink>
          </>
        }
      >
        {open.length === 0 ? (
          <p>
            <Explained words={words.noTastingLine} />
          </p>
        ) : (
          open.map(({ id, name, scores, expected }) => <p key={id}>{words.openTasting(name, scores, expected)}</p>)
        )}
      </EmptyState>
      {charts.length === 0 ? null : (
        <section className="section">
          <h2>
            <Explained words={words.sipsOnly} />
          </h2>
          <p>
            <Explained words={words.sipsNote} />
          </p>
          <FactorChartLegend charts={charts} />
          <div className="charts">
            {charts.map((data) => (
              <FactorChart key={data.attribute} data={data} sentence={null} axis={axisWords[trial.factor]} />
            ))}
          </div>
        </section>
      )}
    </>
  );
}
