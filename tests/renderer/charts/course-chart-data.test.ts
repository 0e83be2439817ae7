import { describe, expect, it } from 'vitest';
import { axisTicks } from '#renderer/charts/axis-ticks.ts';
import { type Course, courseChartData, drawnAs, hourTicks, markShapes } from '#renderer/charts/course-chart-data.ts';
import { courseCsv, courseFigures } from '#renderer/charts/course-csv.ts';
import { markPath } from '#renderer/charts/mark-path.ts';
import { numberedSightings } from '#renderer/charts/seen-chart.tsx';
import { spreadLabels } from '#renderer/charts/spread-labels.ts';
import { courseOf } from '../small-course.ts';

const about = { measures: 'metric', wanted_brix: null } as const;
const chart = (jars: readonly Course[], measure: 'sugar' | 'ph' | 'temperature', more = {}) =>
  courseChartData(
    jars,
    jars.map(({ jar }) => jar),
    measure,
    { ...about, ...more },
  );

describe('axisTicks(low, high, steps, most)', () => {
  it('takes the first round step that is not too fine, and holds both ends', () => {
    expect(axisTicks(0, 84, [12, 24, 48], 6)).toEqual([0, 24, 48, 72, 96]);
    expect(axisTicks(3.31, 3.92, [0.1, 0.2, 0.5], 5)).toEqual([3.2, 3.4, 3.6, 3.8, 4]);
    expect(axisTicks(-3, 20, [6, 12], 6)).toEqual([-6, 0, 6, 12, 18, 24]);
  });
  it('still has two ticks where all readings are alike, and multiples of the last step beyond it', () => {
    expect(axisTicks(4, 4, [0.1, 0.2], 5)).toEqual([4, 4.1]);
    expect(axisTicks(0, 5000, [24, 720], 5)).toEqual([0, 1440, 2880, 4320, 5760]);
  });
});

describe('spreadLabels(labels, line, room)', () => {
  it('keeps labels a line apart, in their order, inside their room', () => {
    const places = spreadLabels(
      [
        { key: 'b', x: 0, y: 96 },
        { key: 'a', x: 0, y: 95 },
        { key: 'c', x: 0, y: 20 },
      ],
      14,
      [8, 100],
    );
    expect([places?.get('c'), places?.get('a'), places?.get('b')]).toEqual([20, 86, 100]);
  });
  it('gives up where they cannot fit', () => {
    const many = Array.from({ length: 10 }, (_, place) => ({ key: String(place), x: 0, y: 50 }));
    expect(spreadLabels(many, 14, [0, 100])).toBeNull();
  });
});

describe('courseChartData(jars, shown, measure, about)', () => {
  it('keeps a jar’s colour and shape when it is shown alone', () => {
    const jars = [courseOf('A'), courseOf('B'), courseOf('C')];
    const alone = courseChartData(jars, [jars[2]?.jar ?? ''], 'sugar', about);
    expect(alone.series).toHaveLength(1);
    expect(alone.series[0]).toMatchObject({ label: 'C', ...drawnAs(2) });
  });
  it('tells forty jars apart by colour and shape together', () => {
    const drawn = new Set(Array.from({ length: 40 }, (_, place) => JSON.stringify(drawnAs(place))));
    expect(drawn.size).toBe(40);
  });
  it('leaves out jars that were not read, and groups pulls of one hour', () => {
    const pulled = { hours: 48.1, what: 'pulled', note: null } as const;
    const jars = [courseOf('A', { events: [pulled] }), courseOf('B', { brix: [], fall: null, events: [pulled] })];
    const data = chart(jars, 'sugar');
    expect(data.series.map(({ label }) => label)).toEqual(['A']);
    expect(data.pulls).toEqual([{ hours: 48, labels: 'A, B' }]);
  });
  it('shares one axis of hours between the measures, and cuts a band that widens without end', () => {
    const wild = courseOf('A', {
      fall: {
        model: 'first-order',
        residualSd: 1,
        curve: [{ hours: 0, value: 6, low: 0, high: 900 }],
      },
    });
    expect(chart([wild], 'sugar').yTicks.at(-1)).toBeLessThanOrEqual(10);
    expect(chart([wild], 'sugar').xTicks).toEqual(chart([wild], 'ph').xTicks);
    expect(hourTicks([courseOf('A')], [1e6]).at(-1)).toBeLessThan(200);
  });
  it('keeps readings that never moved in the middle of their axis', () => {
    const still = courseOf('A', { temperature_C: [0, 12, 24].map((hours) => ({ hours, value: 21 })) });
    expect(chart([still], 'temperature').yTicks).toEqual([19, 20, 21, 22, 23]);
  });
  it('shows °F where the kitchen measures so', () => {
    const data = chart([courseOf('A')], 'temperature', { measures: 'us' });
    expect([data.unit, data.series[0]?.points[0]?.value]).toEqual(['°F', 68]);
  });
});

describe('courseCsv(data) and courseFigures(data)', () => {
  it('hold every mark: readings, the fitted fall with its band, the wanted sweetness', () => {
    const data = chart([courseOf('A', { sweetEnough: { hours: 30, low: 27, high: null } })], 'sugar', {
      wanted_brix: 4,
    });
    const lines = courseCsv(data).trim().split('\r\n');
    expect(lines[0]).toBe('measure,unit,kind,jar,level,hours,value,low_95,high_95');
    expect(lines.filter((line) => line.includes(',reading,'))).toHaveLength(4);
    expect(lines).toContain('Sugar,°Bx,"fitted, first-order",A,2 days,0,6,5.8,6.2');
    expect(lines.at(-1)).toBe('Hours to the wanted sweetness,h,forecast,A,2 days,30,4,27,');
    expect(courseFigures(data).split('\n')).toHaveLength(5);
  });
});

describe('markPath(shape, x, y)', () => {
  it('draws each shape its own way, about its place', () => {
    const paths = markShapes.map((shape) => markPath(shape, 50, 50));
    expect(new Set(paths).size).toBe(markShapes.length);
    for (const path of paths) expect(path).not.toContain('NaN');
  });
});

describe('numberedSightings(jars)', () => {
  it('numbers what was seen in the order it first came, and nothing that was done', () => {
    const jars = [
      courseOf('A', {
        events: [
          { hours: 30, what: 'froth', note: null },
          { hours: 48, what: 'pulled', note: null },
        ],
      }),
      courseOf('B', { events: [{ hours: 9, what: 'first-bubbles', note: null }] }),
    ];
    expect([...numberedSightings(jars)]).toEqual([
      ['first-bubbles', 1],
      ['froth', 2],
    ]);
  });
});
