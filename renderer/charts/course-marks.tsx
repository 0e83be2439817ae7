import { usePlotArea, useXAxisScale, useYAxisScale } from 'recharts';
import { phrase } from '#core/words/phrase.ts';
import type { CourseChartData, CourseSeries } from './course-chart-data.ts';
import { markPath } from './mark-path.ts';
import { spreadLabels } from './spread-labels.ts';

const line_px = 14;
/** Beyond this many jars the lines tell more than their labels. */
const labelledUpTo = 12;

/** Whether each jar's label stands at its last reading; otherwise a key below the chart tells them apart. */
export function areLabelled({ series }: CourseChartData): boolean {
  return series.length > 1 && series.length <= labelledUpTo;
}

interface Placing {
  readonly x: (hours: number) => number;
  readonly y: (value: number) => number;
}

function path(places: readonly (readonly [number, number])[]): string {
  return places.length === 0 ? '' : `M${places.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;
}

function Band({ series, x, y }: Placing & { readonly series: CourseSeries }) {
  const bounded = (series.fall?.curve ?? []).flatMap(({ hours, low, high }) =>
    low === null || high === null ? [] : [{ at: x(hours), low: y(low), high: y(high) }],
  );
  if (bounded.length === 0) return null;
  const upper = bounded.map(({ at, high }) => [at, high] as const);
  const lower = bounded.toReversed().map(({ at, low }) => [at, low] as const);
  return <path className="course-band" d={`${path([...upper, ...lower])}Z`} fill={series.colour} fillOpacity={0.14} />;
}

function Fall({ series, x, y }: Placing & { readonly series: CourseSeries }) {
  const { fall, points, colour } = series;
  const isFitted = fall !== null;
  const places = (fall?.curve ?? points).map(({ hours, value }) => [x(hours), y(value)] as const);
  return (
    <path
      className={isFitted ? 'course-fall' : 'course-thread'}
      d={path(places)}
      fill="none"
      stroke={colour}
      strokeWidth={isFitted ? 2 : 1}
      strokeDasharray={isFitted ? undefined : '2 3'}
      strokeOpacity={isFitted ? 1 : 0.7}
    />
  );
}

interface SweetProps extends Placing {
  readonly series: CourseSeries;
  readonly wanted: number;
  readonly ends: readonly [number, number];
}

/** When the wanted sweetness is reached: a whisker along the hours, cut where the chart ends. */
function Sweet({ series, wanted, x, y, ends }: SweetProps) {
  const { sweetEnough, colour } = series;
  if (sweetEnough === null) return null;
  const inside = (at: number) => Math.min(ends[1], Math.max(ends[0], at));
  const [low, high] = [
    sweetEnough.low === null ? ends[0] : inside(x(sweetEnough.low)),
    sweetEnough.high === null ? ends[1] : inside(x(sweetEnough.high)),
  ];
  const at = x(sweetEnough.hours);
  const height = y(wanted);
  return (
    <g className="course-sweet" stroke={colour} strokeWidth={2} fill="none">
      <path d={`M${low} ${height}H${high}M${low} ${height - 4}v8M${high} ${height - 4}v8`} />
      {at > ends[1] ? null : <circle cx={at} cy={height} r={7} />}
    </g>
  );
}

/** The drawing of a course: bands and falls behind, pulls, then the readings and the jars' labels in front. */
export function CourseMarks({ data }: { readonly data: CourseChartData }) {
  const plot = usePlotArea();
  const xScale = useXAxisScale();
  const yScale = useYAxisScale();
  if (plot === undefined || xScale === undefined || yScale === undefined) return null;
  const x = (hours: number) => xScale(hours) ?? 0;
  const bottom = plot.y + plot.height;
  const right = plot.x + plot.width;
  // What lies outside the axis, such as the open end of a band, stays at its edge.
  const y = (value: number) => Math.min(bottom, Math.max(plot.y, yScale(value) ?? 0));
  const { series, line } = data;
  const isLineInside = line !== null && line.value >= (data.yTicks[0] ?? 0) && line.value <= (data.yTicks.at(-1) ?? 0);
  const ends = areLabelled(data)
    ? series.flatMap(({ jar, points }) => {
        const last = points.at(-1);
        return last === undefined ? [] : [{ key: jar, x: x(last.hours), y: y(last.value) + 4 }];
      })
    : [];
  const heights = spreadLabels(ends, line_px, [plot.y + 8, bottom]);
  return (
    <g className="course-marks">
      {data.pulls.map(({ hours, labels }) => (
        <g key={hours} className="course-pull">
          <path d={`M${x(hours)} ${plot.y}V${bottom}`} />
          {data.pulls.length > 3 ? null : (
            <text x={x(hours) - 4} y={plot.y + 11} textAnchor="end">
              {series.length === 1 ? phrase`pulled` : phrase`${labels} pulled`}
            </text>
          )}
        </g>
      ))}
      {line === null || !isLineInside ? null : (
        <g className="course-line">
          <path d={`M${plot.x} ${y(line.value)}H${right}`} />
          <text x={plot.x + 4} y={y(line.value) - 4}>
            {line.words}
          </text>
        </g>
      )}
      {series.map((one) => (
        <Band key={one.jar} series={one} x={x} y={y} />
      ))}
      {series.map((one) => (
        <Fall key={one.jar} series={one} x={x} y={y} />
      ))}
      {line === null || data.measure !== 'sugar'
        ? null
        : series.map((one) => (
            <Sweet key={one.jar} series={one} wanted={line.value} x={x} y={y} ends={[plot.x, right]} />
          ))}
      {series.map(({ jar, points, colour, shape }) =>
        points.map(({ hours, value }, place) => (
          <path
            // biome-ignore lint/suspicious/noArrayIndexKey: two readings may share their hour
            key={`${jar} ${place}`}
            className="course-reading"
            d={markPath(shape, x(hours), y(value))}
            fill={colour}
            stroke="var(--linen)"
            strokeWidth={1}
          />
        )),
      )}
      {ends.map(({ key, x: at, y: wanted }) => (
        <text key={key} x={at + 9} y={heights?.get(key) ?? wanted} className="chart-mean-words">
          {series.find(({ jar }) => jar === key)?.label}
        </text>
      ))}
    </g>
  );
}
