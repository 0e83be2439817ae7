import type { Factor } from '#core/trial/factor.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { attributesInOrder } from '#renderer/charts/attribute-colour.ts';
import { FactorChart } from '#renderer/charts/factor-chart.tsx';
import { factorChartData } from '#renderer/charts/factor-chart-data.ts';
import { FactorChartLegend } from '#renderer/charts/factor-chart-legend.tsx';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { axisWords, words } from './words.ts';

interface ChartsProps {
  readonly findings: ValueOf<'findings:read'>;
  readonly factor: Factor;
  readonly levels: readonly string[];
}

function FactorCharts({ findings, factor, levels }: ChartsProps) {
  if (findings.tastings === 0) return <p className="soft">{words.noTasting}</p>;
  const attributes = attributesInOrder([...new Set(findings.scores.map(({ attribute }) => attribute))]);
  if (attributes.length === 0) return <p className="soft">{words.noScores}</p>;
  const charts = attributes.map((attribute) => factorChartData(findings, attribute, levels));
  return (
    <>
      <FactorChartLegend hasCurve={charts.some(({ hasCurve }) => hasCurve)} />
      <div className="charts">
        {charts.map((data) => (
          <FactorChart
            key={data.attribute}
            data={data}
            sentence={findings.sentences.find(({ attribute }) => attribute === data.attribute)?.sentence ?? null}
            axis={axisWords[factor]}
          />
        ))}
      </div>
    </>
  );
}

interface TrialFindingsProps {
  readonly trial: string;
  readonly factor: Factor;
  readonly levels: readonly string[];
}

/** How tang, fizz, sweetness and liking move with the factor, over all closed tastings of a trial. */
export function TrialFindings({ trial, factor, levels }: TrialFindingsProps) {
  const findings = useAnswer('findings:read', { trial });
  return <Answer of={findings}>{(value) => <FactorCharts findings={value} factor={factor} levels={levels} />}</Answer>;
}
