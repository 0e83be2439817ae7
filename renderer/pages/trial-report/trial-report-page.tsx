import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useLongAnswer } from '#renderer/app/use-long-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Paper, PaperSheet } from '#renderer/parts/paper/paper.tsx';
import { PaperField } from '#renderer/parts/paper/paper-field.tsx';
import { useFit } from '#renderer/parts/paper/use-fit.ts';
import { usePaperSize } from '#renderer/parts/paper/use-paper-size.ts';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { UnderWay } from '#renderer/parts/under-way/under-way.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { ReportEnding } from './report-ending.tsx';
import { ReportSheet } from './report-sheet.tsx';
import { words } from './words.ts';
import './trial-report.css';

/** Of ten points: below five nobody reads it. */
const smallest = 0.5;

interface ReportProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly findings: ValueOf<'findings:read'>;
  readonly places: ValueOf<'findings:places'>;
}

function Report({ trial, findings, places }: ReportProps) {
  const paper = usePaperSize();
  const { ref, isTooLong } = useFit(smallest);
  const winner = findings.headline?.winner ?? null;
  const level =
    trial.levelsWhole.find(({ name }) => name === winner?.level) ??
    trial.levelsWhole.find(({ isControl }) => isControl);
  const preview = useAnswer(
    'recipes:preview',
    { trial: trial.id, level: level?.name ?? '' },
    { enabled: level !== undefined },
  );
  if (findings.scores.length === 0 && places.rankings.length === 0) {
    return (
      <EmptyState
        title={words.nothing}
        actions={<ButtonLink to={`/trials/${trial.id}/taste`}>{words.toTaste}</ButtonLink>}
      >
        <p>
          <Explained words={words.nothingLine} />
        </p>
      </EmptyState>
    );
  }
  return (
    <>
      <section className="section form no-print">
        <div className="field-grid">
          <PaperField paper={paper} />
        </div>
        {isTooLong ? (
          <p className="field-fault" role="alert">
            {words.tooLong}
          </p>
        ) : null}
        <div className="button-row">
          <Button weight="main" onClick={() => window.print()}>
            {words.print}
          </Button>
        </div>
        <p className="soft small">
          <Explained words={words.printHint} />
        </p>
      </section>
      <Paper size={paper.size} label={words.preview}>
        <PaperSheet label={words.page} margin="11mm 12mm">
          <div ref={ref} className="report">
            <ReportSheet trial={trial} findings={findings} rankings={places.rankings} />
            <ReportEnding winner={winner} level={level} cautions={preview.data?.cautions ?? null} />
          </div>
        </PaperSheet>
      </Paper>
    </>
  );
}

function TrialReport({ trial }: { readonly trial: ValueOf<'trials:open'> }) {
  const findings = useLongAnswer('findings:read', { trial: trial.id });
  const places = useAnswer('findings:places', { trial: trial.id });
  const found = findings.value;
  if (found === undefined) return <UnderWay of={findings} doing={words.reading} />;
  return <Answer of={places}>{(placed) => <Report trial={trial} findings={found} places={placed} />}</Answer>;
}

/** A trial's findings on one printed page. */
export function TrialReportPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  return (
    <Answer of={trial}>
      {(value) => (
        <>
          <div className="no-print">
            <PageHead
              above={
                <>
                  <Link href={`/trials/${id}/findings`}>{words.back}</Link>
                  <SampleMark when={value.isSample} />
                </>
              }
              title={words.title}
              lead={words.lead}
            />
          </div>
          <TrialReport trial={value} />
        </>
      )}
    </Answer>
  );
}
