import { useAnswer } from '#renderer/app/use-answer.ts';
import { useLongAnswer } from '#renderer/app/use-long-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { TrialHead } from '#renderer/parts/trial-head/trial-head.tsx';
import { UnderWay } from '#renderer/parts/under-way/under-way.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { PanelFindings } from './panel-findings.tsx';
import { SipsOnly } from './sips-only.tsx';
import { words } from './words.ts';

function TrialFindings({ trial }: { readonly trial: ValueOf<'trials:open'> }) {
  const findings = useLongAnswer('findings:read', { trial: trial.id });
  const places = useAnswer('findings:places', { trial: trial.id });
  const sips = useAnswer('sips:byTrial', { trial: trial.id });
  const tastings = useAnswer('tastings:list', { trial: trial.id });
  const found = findings.value;
  if (found === undefined) return <UnderWay of={findings} doing={words.reading} />;
  return (
    <Answer of={sips}>
      {({ sips: own }) =>
        found.tastings > 0 ? (
          <Answer of={places}>
            {(placed) => <PanelFindings trial={trial} findings={found} places={placed} sips={own} />}
          </Answer>
        ) : (
          <SipsOnly trial={trial} findings={found} sips={own} open={tastings.data?.tastings ?? []} />
        )
      }
    </Answer>
  );
}

/** What a trial's closed tastings say, and the maker's own sips beside them. */
export function FindingsPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  return (
    <Answer of={trial}>
      {(value) => (
        <>
          <TrialHead trial={value} step="findings" />
          <TrialFindings trial={value} />
        </>
      )}
    </Answer>
  );
}
