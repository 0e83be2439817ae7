import { comparedAt_C } from '#core/ferment/equivalent-hours.ts';
import { phrase } from '#core/words/phrase.ts';
import { glued } from '#renderer/format/glued.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { CourseCharts } from '#renderer/parts/course/course-charts.tsx';
import { stoodWords, sweetWords } from '#renderer/parts/course/course-sentences.ts';
import { type WantedSweetness, WantedSweetnessField } from '#renderer/parts/course/wanted-sweetness.tsx';
import { words as courseWords } from '#renderer/parts/course/words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

interface JarCourseProps {
  readonly course: ValueOf<'course:read'>;
  readonly jar: string;
  readonly measures: Measures;
  readonly wanted: WantedSweetness;
}

/** One jar's readings over its hours, when it is as sweet as wanted, and its time at temperature. */
export function JarCourse({ course, jar, measures, wanted }: JarCourseProps) {
  const own = course.jars.find((one) => one.jar === jar);
  if (own === undefined) return null;
  const comparedAt = measures.temperature(comparedAt_C);
  const stood = stoodWords(own, measures);
  const isRead = own.brix.length > 0;
  return (
    <section className="section" aria-label={words.course}>
      <h2>
        <Explained words={words.course} />
      </h2>
      <CourseCharts jars={course.jars} shown={[jar]} measures={measures} wanted_brix={wanted.brix} />
      {isRead ? (
        <div className="subsection">
          <WantedSweetnessField wanted={wanted} />
          {wanted.brix === null ? null : (
            <p className="course-answer" role="status">
              {glued(sweetWords(own, wanted.brix))}
            </p>
          )}
          <p className="soft small course-answer">{courseWords.apparent}</p>
        </div>
      ) : null}
      {stood === null ? null : (
        <div className="subsection">
          <h3>
            <Explained words={courseWords.stoodHead} />
          </h3>
          <p className="jar-sentence">{glued(stood)}</p>
          <p className="soft small course-answer">
            {glued(
              phrase`${courseWords.stoodLine(comparedAt)} Reckoned ${courseWords.stoodFrom[own.stood?.from ?? 'usual'](comparedAt)}.`,
            )}
          </p>
        </div>
      )}
    </section>
  );
}
