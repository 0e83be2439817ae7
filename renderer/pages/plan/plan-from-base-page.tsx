import { useEffect } from 'react';
import { Link, useLocation } from 'wouter';
import { ask } from '#renderer/app/ask.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { keptPlan } from './plan-draft.ts';
import { freshPlan, keepPlan } from './use-plan-draft.ts';
import { words } from './words.ts';

interface ChosenProps {
  readonly base: string;
  readonly system: 'metric' | 'us';
}

/** Writes the base into the plan, a half-made one too, and goes on to its form. */
function Chosen({ base, system }: ChosenProps) {
  const [, go] = useLocation();
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the way is taken
  useEffect(() => {
    let isHere = true;
    ask('drafts:open', { name: 'plan' })
      .then(({ draft }) => keepPlan({ ...(keptPlan(draft?.body) ?? freshPlan(system)), base }))
      // Where nothing could be kept the form still opens, and the base is chosen there.
      .catch(() => undefined)
      .then(() => {
        if (isHere) go('/trials/new', { replace: true });
      });
    return () => {
      isHere = false;
    };
  }, []);
  return null;
}

/** The way from a base to a plan whose jars are filled from it. */
export function PlanFromBasePage({ id }: { readonly id: string }) {
  const base = useAnswer('bases:open', { base: id });
  const kitchen = useAnswer('kitchen:open', {});
  return (
    <>
      <PageHead above={<Link href={`/bases/${id}`}>{base.data?.name ?? words.base}</Link>} title={words.title} />
      <Answer of={kitchen}>
        {({ measures }) => <Answer of={base}>{(value) => <Chosen base={value.id} system={measures} />}</Answer>}
      </Answer>
    </>
  );
}
