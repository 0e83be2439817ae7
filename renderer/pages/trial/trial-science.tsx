import { comparedAt_C } from '#core/ferment/equivalent-hours.ts';
import { sellingCaution, tapWaterCaution } from '#core/ferment/standing-cautions.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { CautionList } from '#renderer/parts/caution/caution-list.tsx';
import { cautionsOfSheets } from '#renderer/parts/caution/cautions-of-sheets.ts';
import { CourseCharts } from '#renderer/parts/course/course-charts.tsx';
import { equivalentWords, hoursWords, sweetWords } from '#renderer/parts/course/course-sentences.ts';
import { useWantedSweetness, WantedSweetnessField } from '#renderer/parts/course/wanted-sweetness.tsx';
import { words as courseWords } from '#renderer/parts/course/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Trial = ValueOf<'trials:open'>;
type Sheets = ValueOf<'sheets:ofTrial'>;
type Course = ValueOf<'course:read'>;

interface TrialScienceProps {
  readonly trial: Trial;
  readonly measures: Measures;
}

/** How long each jar stood, and what that comes to at one temperature. */
function StoodTable({ course, measures }: { readonly course: Course; readonly measures: Measures }) {
  const comparedAt = measures.temperature(comparedAt_C);
  const jars = course.jars.filter(({ stood }) => stood !== null);
  if (jars.length === 0) return null;
  return (
    <div className="subsection">
      <h3>
        <Explained words={courseWords.stoodHead} />
      </h3>
      <p className="soft small course-answer">{courseWords.stoodLine(comparedAt)}</p>
      <DataTable
        caption={courseWords.stoodTable(comparedAt)}
        rows={jars}
        rowKey={({ jar }) => jar}
        columns={[
          { head: phrase`Jar`, cell: ({ label, level }) => `${label} (${level})` },
          { head: phrase`Stood`, cell: ({ stood }) => hoursWords(stood?.hours ?? 0), isFigure: true },
          {
            head: courseWords.stoodColumn(comparedAt),
            cell: ({ stood }) => (stood === null ? '–' : equivalentWords(stood.equivalent)),
            isFigure: true,
          },
          { head: phrase`Reckoned`, cell: ({ stood }) => courseWords.stoodFrom[stood?.from ?? 'usual'](comparedAt) },
        ]}
      />
    </div>
  );
}

function CourseSection({ trial, measures }: TrialScienceProps) {
  const wanted = useWantedSweetness();
  const course = useAnswer(
    'course:read',
    { trial: trial.id, ...(wanted.brix === null ? {} : { wanted_brix: wanted.brix }) },
    { keepLast: true },
  );
  const wanted_brix = wanted.brix;
  return (
    <section className="section" aria-label={words.course}>
      <h2>
        <Explained words={words.course} />
      </h2>
      <Answer of={course}>
        {(value) => {
          const read = value.jars.filter(({ brix }) => brix.length > 0);
          return (
            <>
              <CourseCharts
                jars={value.jars}
                shown={value.jars.map(({ jar }) => jar)}
                measures={measures}
                wanted_brix={wanted_brix}
              />
              {read.length === 0 ? null : (
                <div className="subsection">
                  <WantedSweetnessField wanted={wanted} />
                  {wanted_brix === null ? null : (
                    <DataTable
                      caption={courseWords.sweetTable}
                      rows={read}
                      rowKey={({ jar }) => jar}
                      columns={[
                        { head: phrase`Jar`, cell: ({ label, level }) => `${label} (${level})` },
                        { head: phrase`When`, cell: (one) => sweetWords(one, wanted_brix) },
                      ]}
                    />
                  )}
                  <p className="soft small course-answer">{courseWords.apparent}</p>
                </div>
              )}
              <StoodTable course={value} measures={measures} />
            </>
          );
        }}
      </Answer>
    </section>
  );
}

/** What each level's jar comes to, on a line. */
function SheetTable({ sheets, measures }: { readonly sheets: Sheets; readonly measures: Measures }) {
  const problems = [...new Set(sheets.levels.flatMap(({ problem }) => problem ?? []))];
  return (
    <section className="section" aria-label={words.sheets}>
      <h2>
        <Explained words={words.sheets} />
      </h2>
      {problems.map((problem) => (
        <p key={problem}>{problem}</p>
      ))}
      <DataTable
        caption={words.sheetsTable}
        rows={sheets.levels}
        rowKey={({ level }) => level}
        columns={[
          { head: phrase`Level`, cell: ({ level }) => level },
          {
            head: phrase`Volume`,
            cell: ({ sheet }) => (sheet === null ? words.notKnown : measures.volume(sheet.volume_mL)),
            isFigure: true,
          },
          {
            head: phrase`Full`,
            cell: ({ sheet }) => (sheet === null ? words.notKnown : `${Math.round(sheet.fillFraction * 100)} %`),
            isFigure: true,
          },
          {
            head: phrase`Sugar`,
            cell: ({ sheet }) =>
              sheet?.sugar.total_g_per_L == null ? words.notKnown : measures.sugar(sheet.sugar.total_g_per_L),
            isFigure: true,
          },
          {
            head: phrase`°Bx`,
            cell: ({ sheet }) => (sheet?.sugar.brix == null ? words.notKnown : fixed(sheet.sugar.brix, 1)),
            isFigure: true,
          },
          {
            head: phrase`Alcohol at most`,
            cell: ({ sheet }) =>
              sheet?.alcohol.ifAllSugar_pctVol == null
                ? words.notKnown
                : `${fixed(sheet.alcohol.ifAllSugar_pctVol, 1)} % vol`,
            isFigure: true,
          },
          {
            head: phrase`Starts at`,
            cell: ({ sheet }) => (sheet?.thaw == null ? '–' : measures.temperature(sheet.thaw.mix_C)),
            isFigure: true,
          },
        ]}
      />
      <p className="soft small course-answer">{words.sheetsNote}</p>
    </section>
  );
}

/** The arithmetic of a trial: its jars' course, what they hold, and the cautions that go with them. */
export function TrialScience({ trial, measures }: TrialScienceProps) {
  const sheets = useAnswer('sheets:ofTrial', { trial: trial.id });
  return (
    <>
      <CourseSection trial={trial} measures={measures} />
      <Answer of={sheets}>
        {(value) => (
          <>
            <SheetTable sheets={value} measures={measures} />
            <section className="section" aria-label={words.cautions}>
              <h2>
                <Explained words={words.cautions} />
              </h2>
              <CautionList
                cautions={[...cautionsOfSheets(value.levels, trial.vessel), tapWaterCaution(), sellingCaution()]}
              />
            </section>
          </>
        )}
      </Answer>
    </>
  );
}
