import { attributesInOrder } from '#renderer/charts/attribute-colour.ts';
import { FactorChart } from '#renderer/charts/factor-chart.tsx';
import { factorChartCsv } from '#renderer/charts/factor-chart-csv.ts';
import { factorChartData } from '#renderer/charts/factor-chart-data.ts';
import { FactorChartLegend } from '#renderer/charts/factor-chart-legend.tsx';
import { type Sip, sippedAttributes } from '#renderer/charts/sip-marks.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Closest } from './closest.tsx';
import { DriversFindings } from './drivers.tsx';
import { FigureDetails } from './figure-details.tsx';
import { Headline } from './headline.tsx';
import { RankedFindings } from './ranked-findings.tsx';
import { RightnessFindings } from './rightness.tsx';
import { SaveFindings } from './save-findings.tsx';
import { TakenOutLines } from './taken-out-lines.tsx';
import { TasterCharts } from './taster-charts-part.tsx';
import { TastersForm } from './tasters-form.tsx';
import { axisWords, words } from './words.ts';

type Findings = ValueOf<'findings:read'>;

interface PanelFindingsProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly findings: Findings;
  readonly places: ValueOf<'findings:places'>;
  readonly sips: readonly Sip[];
}

/** Liking first, then the four usual attributes, then the others; what was only sipped comes last. */
function attributesOf(findings: Findings, sips: readonly Sip[]): string[] {
  const scored = attributesInOrder([...new Set(findings.scores.map(({ attribute }) => attribute))]);
  const rest = scored.filter((attribute) => attribute !== findings.liking);
  const known = new Set(scored.map((attribute) => attribute.toLowerCase()));
  const only = sippedAttributes(sips).filter((attribute) => !known.has(attribute));
  return [...(findings.liking === null ? [] : [findings.liking]), ...rest, ...only];
}

/** What closed tastings say: the answer first, then liking, then the rest, then the figures. */
export function PanelFindings({ trial, findings, places, sips }: PanelFindingsProps) {
  const order = attributesOf(findings, sips);
  const levels = trial.levelsWhole.map(({ name }) => name);
  const charts = order.map((attribute) => factorChartData(findings, attribute, levels, { factor: trial.factor, sips }));
  const sentenceOf = (attribute: string) => findings.sentences.find((one) => one.attribute === attribute);
  const drawn = (data: (typeof charts)[number]) => {
    const isLiking = data.attribute === findings.liking;
    return (
      <FactorChart
        key={data.attribute}
        data={data}
        sentence={sentenceOf(data.attribute)?.sentence ?? null}
        more={sentenceOf(data.attribute)?.againstControl ?? null}
        axis={axisWords[trial.factor]}
        winner={isLiking ? (findings.headline?.winner?.level ?? null) : null}
        isLead={isLiking}
      />
    );
  };
  return (
    <>
      {findings.headline === null ? null : <Headline trial={trial.id} headline={findings.headline} />}
      <TakenOutLines lines={findings.takenOut} />
      <RankedFindings trial={trial.id} rankings={places.rankings} isAnswer={findings.headline === null} />
      {findings.scores.length === 0 ? null : <Closest trial={trial.id} />}
      {charts.length === 0 && places.rankings.length > 0 ? null : (
        <section className="section">
          <div className="section-head">
            <h2>
              <Explained words={words.sample} />
            </h2>
            <SaveFindings trial={trial} csv={() => factorChartCsv(charts)} />
          </div>
          {findings.scores.length === 0 ? (
            <p className="soft">
              <Explained words={words.noScores} />
            </p>
          ) : null}
          <FactorChartLegend charts={charts} />
          {charts.filter(({ attribute }) => attribute === findings.liking).map(drawn)}
          <div className="charts">{charts.filter(({ attribute }) => attribute !== findings.liking).map(drawn)}</div>
        </section>
      )}
      <RightnessFindings trial={trial.id} />
      {findings.scores.length === 0 ? null : <DriversFindings trial={trial.id} />}
      {findings.tasters.length === 0 ? null : (
        <TastersForm trial={trial.id} findings={findings}>
          <TasterCharts trial={trial.id} liking={findings.liking} />
        </TastersForm>
      )}
      {findings.analysis === null ? null : <FigureDetails findings={findings} scored={places.scored} order={order} />}
    </>
  );
}
