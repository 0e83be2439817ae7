import type { Course } from '#renderer/charts/course-chart-data.ts';
import { jarOf } from './small-kitchen.ts';

/** The course of one made-up jar: four readings and what was fitted to them. */
export function courseOf(label: string, change: Partial<Course> = {}): Course {
  const points = (values: readonly number[]) => values.map((value, place) => ({ hours: 16 * place, value }));
  return {
    jar: jarOf(label, 1).id,
    label,
    level: '2 days',
    isControl: true,
    brix: points([6, 5, 4.2, 3.5]),
    ph: points([3.8, 3.7, 3.6, 3.5]),
    temperature_C: points([20, 21, 22, 22]),
    fall: {
      model: 'first-order',
      residualSd: 0.04,
      curve: [
        { hours: 0, value: 6, low: 5.8, high: 6.2 },
        { hours: 48, value: 3.5, low: 3.3, high: 3.7 },
      ],
    },
    events: [],
    stood: { hours: 48, equivalent: { low: 44.2, middle: 45, high: 46.1 }, from: 'readings' },
    sweetEnough: null,
    equivalentHours: { low: 44.2, middle: 45, high: 46.1 },
    cautions: [],
    reasons: [],
    ...change,
  };
}
