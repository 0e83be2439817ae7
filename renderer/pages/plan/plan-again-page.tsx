import { useCallback, useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { ask } from '#renderer/app/ask.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { measuresOf } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { nextFullHour } from './local-moment.ts';
import { keptPlan, type PlanDraft } from './plan-draft.ts';
import { planLike } from './plan-like.ts';
import { keepPlan } from './use-plan-draft.ts';
import { words } from './words.ts';

interface AgainProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly system: 'metric' | 'us';
}

function Again({ trial, system }: AgainProps) {
  const [, go] = useLocation();
  const [waiting, setWaiting] = useState<PlanDraft | null>(null);
  const fill = useCallback(async () => {
    const [seed = 1] = crypto.getRandomValues(new Uint32Array(1));
    await keepPlan(planLike(trial, measuresOf(system), nextFullHour(new Date()), seed));
    go('/trials/new', { replace: true });
  }, [trial, system, go]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: looks once whether a half-made plan is in the way
  useEffect(() => {
    let isHere = true;
    ask('drafts:open', { name: 'plan' }).then(({ draft }) => {
      const kept = keptPlan(draft?.body);
      if (!isHere) return;
      if (kept === null) void fill();
      else setWaiting(kept);
    });
    return () => {
      isHere = false;
    };
  }, []);

  if (waiting === null) return null;
  return (
    <section className="section">
      <h2>
        <Explained words={words.again.waiting} />
      </h2>
      <p>{words.again.line(waiting.question)}</p>
      <div className="button-row">
        <ButtonLink to="/trials/new" weight="main">
          {words.again.goOn}
        </ButtonLink>
        <Button onClick={() => void fill()}>{words.again.instead}</Button>
      </div>
    </section>
  );
}

/** Fills the plan's form from a past trial; asks first where a half-made plan would be lost. */
export function PlanAgainPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  const kitchen = useAnswer('kitchen:open', {});
  return (
    <>
      <PageHead
        above={<Link href={`/trials/${id}`}>{trial.data?.question ?? phrase`Trial`}</Link>}
        title={words.again.title}
      />
      <Answer of={kitchen}>
        {({ measures }) => <Answer of={trial}>{(value) => <Again trial={value} system={measures} />}</Answer>}
      </Answer>
    </>
  );
}
