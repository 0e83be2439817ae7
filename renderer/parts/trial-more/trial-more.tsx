import type { Factor } from '#core/trial/factor.ts';
import { phrase } from '#core/words/phrase.ts';
import { ask } from '#renderer/app/ask.ts';
import { saveFile } from '#renderer/format/save-file.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import { Failure } from '#shared/failure.ts';

const wantedWords = {
  title: phrase`What is wanted`,
  facts: phrase`Say before the tasting how the drink should be; afterwards see which jar comes closest.`,
} as const;

const apartFacts = phrase`Serve two jars blind, again and again, and count who finds the difference.`;

/** The question that a test of two jars answers, by what the trial varies. */
function apartTitle(factor: Factor): string {
  return factor === 'state'
    ? phrase`Is frozen really different from fresh?`
    : phrase`Do two of these jars really taste different?`;
}

const readingsWords = {
  title: phrase`Readings from a table`,
  facts: phrase`Paste from a spreadsheet, or take a file: each row that can’t be taken says why.`,
} as const;

const photosWords = {
  title: phrase`Photos by day`,
  facts: phrase`All jars side by side, day by day.`,
} as const;

const historyWords = {
  title: phrase`What changed, and when`,
  facts: phrase`Every change of its plan and its words, with what stood there before.`,
} as const;

const giveWords = {
  title: phrase`Give it to another kitchen`,
  facts: phrase`One file with its jars, readings, tastings, scores and photos. Another kitchen takes it in on its Data page.`,
  save: phrase`Save as a file`,
  saved: (name: string, left: readonly string[], tellsCodes: boolean, picturesLeft: number) =>
    [
      phrase`${name} was handed to your downloads.`,
      ...(tellsCodes ? [phrase`A tasting in it is still open: whoever reads the file sees the codes.`] : []),
      ...(left.length === 0
        ? []
        : [phrase`Left at home, because jars of other trials were poured too: ${left.join(', ')}.`]),
      ...(picturesLeft === 0
        ? []
        : [
            picturesLeft === 1
              ? phrase`1 photo had no room in it or is missing.`
              : phrase`${picturesLeft} photos had no room in it or are missing.`,
          ]),
    ].join(' '),
  cant: phrase`The file could not be written.`,
} as const;

const calendarWords = {
  title: phrase`Its days in your telephone`,
  facts: phrase`A calendar file with what is still to start, pull and taste; each rings when it is due.`,
  save: phrase`Save calendar`,
  saved: (name: string, events: number) =>
    events === 1
      ? phrase`${name} with 1 entry was handed to your downloads.`
      : phrase`${name} with ${events} entries was handed to your downloads.`,
} as const;

interface TrialMoreProps {
  readonly trial: string;
  readonly factor: Factor;
}

/** What else can be done with a trial, beside its steps. */
export function TrialMore({ trial, factor }: TrialMoreProps) {
  const { say } = useToasts();
  async function give() {
    try {
      const { name, text, left, tellsCodes, picturesLeft } = await ask('data:trialFile', { trial });
      saveFile(new Blob([text], { type: 'application/json' }), name);
      say({ kind: 'done', words: giveWords.saved(name, left, tellsCodes, picturesLeft) });
    } catch (error) {
      say({ kind: 'fault', words: error instanceof Failure ? error.message : giveWords.cant });
    }
  }
  async function giveCalendar() {
    try {
      const { name, text, events } = await ask('trials:calendar', { trial });
      saveFile(new Blob([text], { type: 'text/calendar;charset=utf-8' }), name);
      say({ kind: 'done', words: calendarWords.saved(name, events) });
    } catch (error) {
      say({ kind: 'fault', words: error instanceof Failure ? error.message : giveWords.cant });
    }
  }
  return (
    <section className="section" aria-labelledby="trial-more">
      <h2 id="trial-more">
        <Explained words={phrase`More for this trial`} />
      </h2>
      <RowList label={phrase`More for this trial`}>
        <Row title={wantedWords.title} to={`/trials/${trial}/wishes`} facts={<span>{wantedWords.facts}</span>} />
        <Row title={apartTitle(factor)} to={`/trials/${trial}/telling-apart`} facts={<span>{apartFacts}</span>} />
        <Row title={photosWords.title} to={`/trials/${trial}/photos`} facts={<span>{photosWords.facts}</span>} />
        <Row title={historyWords.title} to={`/history/trials/${trial}`} facts={<span>{historyWords.facts}</span>} />
        <Row title={readingsWords.title} to={`/trials/${trial}/readings`} facts={<span>{readingsWords.facts}</span>} />
        <Row
          title={calendarWords.title}
          facts={<span>{calendarWords.facts}</span>}
          actions={
            <Button weight="quiet" onClick={() => void giveCalendar()}>
              {calendarWords.save}
            </Button>
          }
        />
        <Row
          title={giveWords.title}
          facts={<span>{giveWords.facts}</span>}
          actions={
            <Button weight="quiet" onClick={() => void give()}>
              {giveWords.save}
            </Button>
          }
        />
      </RowList>
    </section>
  );
}
