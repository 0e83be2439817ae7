import { Suspense } from 'react';
import { CourseChart } from '#renderer/charts/course-chart.tsx';
import { type Course, type CourseMeasure, courseChartData } from '#renderer/charts/course-chart-data.ts';
import { SeenChart } from '#renderer/charts/late-drawings.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { courseSentence, fittedSentence } from './course-sentences.ts';
import { seenWords, words } from './words.ts';

const measuresDrawn: readonly CourseMeasure[] = ['sugar', 'ph', 'temperature'];

interface CourseChartsProps {
  /** All jars of the trial: each keeps its mark in every chart. */
  readonly jars: readonly Course[];
  /** The jars to draw. */
  readonly shown: readonly string[];
  readonly measures: Measures;
  readonly wanted_brix: number | null;
}

/** The readings of some jars on one axis of hours, a chart for each measure that was read, and what was seen. */
export function CourseCharts({ jars, shown, measures, wanted_brix }: CourseChartsProps) {
  const drawn = jars.filter(({ jar }) => shown.includes(jar));
  const charts = measuresDrawn
    .map((measure) => courseChartData(jars, shown, measure, { measures: measures.system, wanted_brix }))
    .filter(({ series }) => series.length > 0);
  const isSeen = drawn.some(({ events }) => events.length > 0);
  if (charts.length === 0 && !isSeen)
    return (
      <p className="soft">
        <Explained words={words.none} />
      </p>
    );
  return (
    <>
      {charts.length === 0 ? (
        <p className="soft">
          <Explained words={words.none} />
        </p>
      ) : null}
      <div className="charts">
        {charts.map((data) => (
          <CourseChart
            key={data.measure}
            data={data}
            sentence={courseSentence(drawn, data.measure, measures)}
            more={data.measure === 'sugar' ? fittedSentence(drawn) : null}
          />
        ))}
        <Suspense fallback={null}>
          <SeenChart jars={drawn} nameOf={seenWords} />
        </Suspense>
      </div>
    </>
  );
}
