import { Link } from 'wouter';
import { pressureCautions } from '#core/ferment/pressure-cautions.ts';
import { mouldCaution, sellingCaution, tapWaterCaution } from '#core/ferment/standing-cautions.ts';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { dayOfJar } from '#renderer/format/moments.ts';
import { amountOf } from '#renderer/format/typed-amount.ts';
import {
  additionWords,
  capital,
  coverWords,
  daysWords,
  jarStateWords,
  joined,
  vesselWords,
} from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { BottlesOfJar } from '#renderer/parts/bottling/bottles-of.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { BaseMould } from '#renderer/parts/caution/base-mould.tsx';
import { CautionList } from '#renderer/parts/caution/caution-list.tsx';
import { useWantedSweetness } from '#renderer/parts/course/wanted-sweetness.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { type Fact, Facts } from '#renderer/parts/facts/facts.tsx';
import { HistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { JarActs } from '#renderer/parts/jar-work/jar-acts.tsx';
import { mayBeWatched } from '#renderer/parts/jar-work/next-act.ts';
import { QuickReading } from '#renderer/parts/jar-work/quick-reading.tsx';
import { SightingsToTap } from '#renderer/parts/jar-work/sightings-to-tap.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { PhotoEntry } from '#renderer/parts/photos/photo-entry.tsx';
import { Shelf } from '#renderer/parts/shelf/shelf.tsx';
import { type ShelfSurroundings, trialShelfJars } from '#renderer/parts/shelf/trial-shelf-jars.tsx';
import { useShelfSurroundings } from '#renderer/parts/shelf/use-shelf-surroundings.ts';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { JarCourse } from './jar-course.tsx';
import { JarDates } from './jar-dates.tsx';
import { Diary } from './jar-entries.tsx';
import { JarSheet, useClosingQuestion } from './jar-sheet.tsx';
import { words } from './words.ts';
import './jar.css';

type Whole = ValueOf<'jars:open'>;

function formulaFacts({ jar, formula, vessel }: Whole, { measures }: ShelfSurroundings): Fact[] {
  const added = formula.additions.map((addition) => {
    const end = addition.leftIn === undefined ? '' : addition.leftIn ? phrase`, left in` : phrase`, strained out`;
    return `${additionWords(addition, measures)}${end}`;
  });
  return [
    { name: phrase`Base`, value: measures.volume(jar.base_mL) },
    { name: phrase`Added`, value: added.length === 0 ? words.nothingAdded : joined(added) },
    { name: phrase`Days`, value: daysWords(formula.days) },
    ...(formula.cover === null ? [] : [{ name: phrase`Cover`, value: coverWords[formula.cover] }]),
    ...(formula.temperature_C === null
      ? []
      : [{ name: phrase`Temperature`, value: measures.temperature(formula.temperature_C) }]),
    { name: phrase`Vessel`, value: `${vesselWords[vessel.kind]}, ${measures.volume(vessel.capacity_mL)}` },
  ];
}

/** The day in large figures: how long it stands, or stood until it was taken out. */
function DayCounter({ whole, now }: { readonly whole: Whole; readonly now: number }) {
  const { jar, formula } = whole;
  if (jar.startedAt === null || jar.state === 'discarded') return null;
  const end = jar.pulledAt ?? jar.strainedAt;
  const day = dayOfJar(jar.startedAt, end === null ? now : Date.parse(end));
  return (
    <p className="jar-day figures">
      {end === null ? words.dayOf(day, formula.days) : words.stoodFor(daysWords(day), daysWords(formula.days))}
    </p>
  );
}

function OnTheShelf({ whole, surroundings }: { readonly whole: Whole; readonly surroundings: ShelfSurroundings }) {
  const trial = useAnswer('trials:open', { trial: whole.jar.trial });
  if (trial.data === undefined) return null;
  const jars = trialShelfJars(trial.data, [whole.jar], surroundings).map(({ to: _, ...jar }) => jar);
  return (
    <div className="jar-alone">
      <Shelf jars={jars} label={words.title(whole.jar.label, whole.jar.levelName)} />
    </div>
  );
}

function JarCautions({ whole, science, course }: CautionsProps) {
  const { jar } = whole;
  const own = course?.jars.find((one) => one.jar === jar.id)?.cautions ?? [];
  const sheet = science?.sheet?.cautions ?? [mouldCaution(), ...pressureCautions(whole.vessel, null)];
  return (
    <section className="section" aria-label={words.cautions}>
      <h2>
        <Explained words={words.cautions} />
      </h2>
      <CautionList
        cautions={[...own, ...(science?.bottled?.cautions ?? []), ...sheet, tapWaterCaution(), sellingCaution()]}
        without={['cold-start']}
      />
    </section>
  );
}

interface CautionsProps {
  readonly whole: Whole;
  readonly science: ValueOf<'sheets:ofJar'> | undefined;
  readonly course: ValueOf<'course:read'> | undefined;
}

function WholeJar({ whole }: { readonly whole: Whole }) {
  const surroundings = useShelfSurroundings();
  const { jar } = whole;
  const { measures } = surroundings;
  const wanted = useWantedSweetness();
  const question = useClosingQuestion(measures.system);
  const course = useAnswer(
    'course:read',
    { trial: jar.trial, ...(wanted.brix === null ? {} : { wanted_brix: wanted.brix }) },
    { keepLast: true },
  );
  const asked = amountOf(question.typed);
  const science = useAnswer(
    'sheets:ofJar',
    { jar: jar.id, ...(asked === undefined ? {} : { sealedWithSugar_g_per_L: asked }) },
    { keepLast: true },
  );
  return (
    <>
      <PageHead
        above={
          <>
            <Link href={`/trials/${jar.trial}`}>{whole.question}</Link>
            <SampleMark when={jar.isSample} />
          </>
        }
        title={words.title(jar.label, jar.levelName)}
        lead={`${capital(jarStateWords[jar.state])}${jar.isControl ? `, ${words.control}` : ''}${jar.discardReason === null ? '' : `: ${jar.discardReason}`}`}
        actions={<JarActs jar={jar} isMain />}
      />
      {whole.baseMould === null ? null : (
        <div className="section">
          <BaseMould mould={whole.baseMould} />
        </div>
      )}
      <section className="section jar-head">
        <OnTheShelf whole={whole} surroundings={surroundings} />
        <div className="subsection">
          <DayCounter whole={whole} now={surroundings.now} />
          <h2>
            <Explained words={words.formula} />
          </h2>
          <Facts facts={formulaFacts(whole, surroundings)} />
          <h2>
            <Explained words={words.dates} />
          </h2>
          <JarDates jar={jar} />
        </div>
      </section>
      {jar.state === 'discarded' ? null : (
        <section className="section">
          <h2>
            <Explained words={words.watch} />
          </h2>
          {mayBeWatched(jar) ? (
            <>
              <QuickReading jar={jar} />
              <SightingsToTap jar={jar} />
            </>
          ) : (
            <p className="soft">
              <Explained words={words.watchLater} />
            </p>
          )}
        </section>
      )}
      <section className="section" aria-label={words.diary}>
        <h2>
          <Explained words={words.diary} />
        </h2>
        {jar.startedAt === null ? null : <PhotoEntry owner={{ jar: jar.id }} earliest={jar.startedAt} />}
        <Diary whole={whole} measures={measures} />
      </section>
      <JarCautions whole={whole} science={science.data} course={course.data} />
      <Answer of={course}>
        {(value) => <JarCourse course={value} jar={jar.id} measures={measures} wanted={wanted} />}
      </Answer>
      <Answer of={science}>
        {(value) => <JarSheet science={value} measures={measures} vessel={whole.vessel} question={question} />}
      </Answer>
      <BottlesOfJar jar={jar} />
      <HistoryLink table="jars" id={jar.id} />
    </>
  );
}

/** One jar: what is in it, what was planned and done, what was measured, seen and tasted. */
export function JarPage({ id }: { readonly id: string }) {
  const jar = useAnswer('jars:open', { jar: id });
  if (jar.error?.code === 'not-found') {
    return (
      <EmptyState title={words.gone.title} actions={<ButtonLink to="/trials">{words.gone.back}</ButtonLink>}>
        <p>
          <Explained words={words.gone.line} />
        </p>
      </EmptyState>
    );
  }
  return <Answer of={jar}>{(value) => <WholeJar whole={value} />}</Answer>;
}
