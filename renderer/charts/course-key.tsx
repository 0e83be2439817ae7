import { phrase } from '#core/words/phrase.ts';
import type { CourseSeries } from './course-chart-data.ts';
import { markPath } from './mark-path.ts';

/** Which mark is which jar, where there are too many for labels in the drawing. */
export function CourseKey({ series }: { readonly series: readonly CourseSeries[] }) {
  return (
    <ul className="course-key small" aria-label={phrase`Which mark is which jar`}>
      {series.map(({ jar, label, colour, shape }) => (
        <li key={jar}>
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <path d={markPath(shape, 8, 8)} fill={colour} />
          </svg>
          {label}
        </li>
      ))}
    </ul>
  );
}
