import { fixed } from '#core/words/figures.ts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { csvText, tabbedText } from '#shared/csv-text.ts';
import { attributeColour } from './attribute-colour.ts';
import { wholeTicks } from './axis-ticks.ts';
import { ChartFrame } from './chart-frame.tsx';
import { figureWords, intervalWords } from './figure-words.ts';
import { LaneDrawing } from './late-drawings.ts';
import { agreementColumns, useColumns } from './taster-csv.ts';
import { tasterWords as words } from './taster-words.ts';
import './lanes.css';

export type TasterAttribute = ValueOf<'findings:tasters'>['attributes'][number];
type Use = TasterAttribute['tasters'][number];

interface TasterChartProps {
  readonly of: TasterAttribute;
}

const nameOf = ({ taster, isAside }: Use) => (isAside ? `${taster} (${words.aside})` : taster);

/** How each taster used one scale: lowest to highest, and the mean with its interval. */
export function ScaleUseChart({ of: { attribute, scale, tasters } }: TasterChartProps) {
  const title = words.useTitle(capital(attribute));
  const rows = tasters.map(({ taster, scores, lowest, highest, mean, meanInterval, spread, isAside }) => [
    taster,
    scores,
    lowest,
    highest,
    mean,
    meanInterval?.[0] ?? null,
    meanInterval?.[1] ?? null,
    spread,
    isAside ? words.aside : '',
  ]);
  return (
    <ChartFrame
      title={title}
      scale={words.useScale(...scale)}
      sentence={null}
      more={words.useKey}
      colour={attributeColour(attribute)}
      isLead={false}
      lanes={tasters.length}
      figures={tabbedText([useColumns, ...rows])}
      csv={() => csvText([useColumns, ...rows])}
      chartKey={words.useKey}
      table={
        <DataTable
          caption={words.useCaption(attribute)}
          rows={tasters}
          rowKey={({ taster }) => taster}
          columns={[
            { head: words.taster, cell: nameOf },
            { head: words.scores, cell: ({ scores }) => scores, isFigure: true },
            { head: words.lowest, cell: ({ lowest }) => figureWords(lowest), isFigure: true },
            { head: words.mean, cell: ({ mean }) => figureWords(mean), isFigure: true },
            {
              head: words.interval,
              cell: ({ meanInterval }) => intervalWords(meanInterval?.[0] ?? null, meanInterval?.[1] ?? null),
              isFigure: true,
            },
            { head: words.highest, cell: ({ highest }) => figureWords(highest), isFigure: true },
            { head: words.spread, cell: ({ spread }) => figureWords(spread), isFigure: true },
          ]}
        />
      }
    >
      <LaneDrawing
        chart={{
          title,
          digits: 1,
          axis: words.useAxis(attribute),
          colour: attributeColour(attribute),
          domain: scale,
          ticks: wholeTicks(scale),
          lanes: tasters.map((use) => ({
            name: nameOf(use),
            value: use.mean,
            interval: withinScale(use.meanInterval, scale),
            range: [use.lowest, use.highest],
            isOpen: use.isAside,
            lack: '',
          })),
        }}
      />
    </ChartFrame>
  );
}

/** An interval may reach beyond the scale's ends; the drawing stops there, the table does not. */
function withinScale(interval: Use['meanInterval'], [low, high]: readonly [number, number]): Use['meanInterval'] {
  return interval === null ? null : [Math.max(low, interval[0]), Math.min(high, interval[1])];
}

/** How far each taster goes with the others on one attribute. */
export function AgreementChart({ of: { attribute, tasters, sentence } }: TasterChartProps) {
  const title = words.agreeTitle(capital(attribute));
  const rows = tasters.map(({ taster, shared, agreement, agreementInterval, isAside }) => [
    taster,
    shared,
    agreement,
    agreementInterval?.[0] ?? null,
    agreementInterval?.[1] ?? null,
    isAside ? words.aside : '',
  ]);
  return (
    <ChartFrame
      title={title}
      scale={words.agreeScale}
      sentence={sentence}
      more={words.agreeKey}
      colour={attributeColour(attribute)}
      isLead={false}
      lanes={tasters.length}
      figures={tabbedText([agreementColumns, ...rows])}
      csv={() => csvText([agreementColumns, ...rows])}
      chartKey={words.agreeKey}
      table={
        <DataTable
          caption={words.agreeCaption(attribute)}
          rows={tasters}
          rowKey={({ taster }) => taster}
          columns={[
            { head: words.taster, cell: nameOf },
            { head: words.shared, cell: ({ shared }) => shared, isFigure: true },
            { head: words.agreement, cell: ({ agreement }) => twoPlaces(agreement), isFigure: true },
            {
              head: words.interval,
              cell: ({ agreementInterval: interval }) =>
                interval === null ? '–' : `${twoPlaces(interval[0])} to ${twoPlaces(interval[1])}`,
              isFigure: true,
            },
          ]}
        />
      }
    >
      <LaneDrawing
        chart={{
          title,
          digits: 2,
          axis: words.agreeAxis,
          colour: attributeColour(attribute),
          domain: [-1, 1],
          ticks: [-1, -0.5, 0, 0.5, 1],
          at: 0,
          lanes: tasters.map((use) => ({
            name: nameOf(use),
            value: use.agreement,
            interval: use.agreementInterval,
            isOpen: use.isAside,
            lack: words.untold(use.shared),
          })),
        }}
      />
    </ChartFrame>
  );
}

function twoPlaces(value: number | null): string {
  return value === null ? '–' : fixed(value, 2).replace('-', '−');
}
