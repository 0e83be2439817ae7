import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import { phrase } from '#core/words/phrase.ts';
import { ask } from '#renderer/app/ask.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import type { HeldDraft } from '#renderer/app/use-draft.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { type Measures, measuresOf } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { type CompositionOf, compositionsOf, jarContents } from '#renderer/parts/shelf/jar-contents.ts';
import { StartOver } from '#renderer/parts/start-over/start-over.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { pantryListId } from './addition-rows.tsx';
import { BaseSection } from './base-section.tsx';
import { HeldSection } from './held-section.tsx';
import { JarsSection } from './jars-section.tsx';
import { judgePlan } from './judge-plan.ts';
import { goTo, OpenList } from './open-list.tsx';
import { PlanAside } from './plan-aside.tsx';
import { PlanContext, type PlanWork } from './plan-context.ts';
import type { PlanDraft } from './plan-draft.ts';
import { PlanNotesList } from './plan-notes-list.tsx';
import { PlanSheets } from './plan-sheets.tsx';
import { QuestionSection } from './question-section.tsx';
import type { Base } from './read-plan.ts';
import { savedInput } from './saved-input.ts';
import { keepPlan, usePlanDraft } from './use-plan-draft.ts';
import { WhenSection } from './when-section.tsx';
import { words } from './words.ts';
import './plan.css';
import './time-line.css';

interface PlanFormProps {
  readonly kept: HeldDraft<PlanDraft>;
  readonly draft: PlanDraft;
  readonly bases: readonly Base[];
  readonly pantry: ValueOf<'pantry:list'>['ingredients'];
  readonly measures: Measures;
}

function useCompositions(pantry: PlanFormProps['pantry']): CompositionOf {
  return useMemo(() => {
    const listed = compositionsOf(pantry);
    return (ingredient) =>
      listed(ingredient) ?? (typeof ingredient === 'string' ? (findIngredient(ingredient)?.composition ?? null) : null);
  }, [pantry]);
}

/** The kitchen's measures, with what its own ingredients weigh by cup and spoon. */
function useOwnMeasures(measures: Measures, pantry: PlanFormProps['pantry']): Measures {
  return useMemo(() => {
    const own = new Map(
      pantry.filter((each) => each.measures.length > 0).map((each) => [each.name.toLowerCase(), each]),
    );
    return { ...measures, measured: (name) => own.get(name.trim().toLowerCase()) };
  }, [measures, pantry]);
}

function PlanForm({ kept, draft, bases, pantry, measures: usual }: PlanFormProps) {
  const measures = useOwnMeasures(usual, pantry);
  const [, go] = useLocation();
  const client = useQueryClient();
  const [isTried, setIsTried] = useState(false);
  const compositionOf = useCompositions(pantry);
  const save = useRequest('trials:save', { showsFailure: true });
  const sayWithUndo = useSayWithUndo();
  const judged = useMemo(
    () =>
      judgePlan(draft, {
        bases,
        measures,
        volumeOf: (base_mL, additions) => jarContents(base_mL, additions, compositionOf),
      }),
    [draft, bases, measures, compositionOf],
  );
  const refusal = save.error;
  const refusedAt = refusal?.path?.join('.');
  const work: PlanWork = {
    draft,
    judged,
    measures,
    change: (step) => {
      if (refusal !== null) save.reset();
      kept.change(step);
    },
    sentenceAt: (at) => {
      const found = judged.sentences.find((one) => one.at === at && (isTried || one.kind !== 'gap'));
      if (found !== undefined || refusal === null || refusedAt !== at) return found;
      return { at, kind: 'problem', message: refusal.message, ways: [] };
    },
  };

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    const [first] = judged.sentences;
    if (first !== undefined) {
      requestAnimationFrame(() => goTo(first.at));
      return;
    }
    save.mutate(savedInput(judged), {
      onSuccess: async ({ trial, jars }) => {
        await kept.forget(false);
        // Read beforehand, so that the next page has its heading at once for those who listen.
        const open = { trial };
        await client.prefetchQuery({ queryKey: ['trials:open', open], queryFn: () => ask('trials:open', open) });
        const onUndone = () => void keepPlan(draft).then(() => go('/trials/new'));
        await sayWithUndo(words.saved(jars.length), { onUndone });
        go(`/trials/${trial}`);
      },
    });
  }

  return (
    <PlanContext value={work}>
      <form className="plan" onSubmit={send} noValidate aria-label={words.title}>
        <QuestionSection />
        <JarsSection />
        <PlanAside compositionOf={compositionOf} />
        <BaseSection bases={bases} />
        <HeldSection />
        <WhenSection />
        <section className="plan-section plan-end">
          <PlanSheets pantry={pantry} />
          <PlanNotesList />
          <OpenList />
          {refusal === null ? null : (
            <p className="field-fault" role="alert">
              {refusal.message}
            </p>
          )}
          <div className="button-row">
            <Button type="submit" weight="main" disabled={save.isPending}>
              {save.isPending ? words.saving : words.save}
            </Button>
            <StartOver
              words={words}
              onForget={() => {
                setIsTried(false);
                save.reset();
                void kept.forget(true);
              }}
            />
          </div>
          <p className="soft small">
            <Explained words={kept.isKept ? words.kept : words.notKept} />
          </p>
        </section>
        <datalist id={pantryListId}>
          {pantry.map(({ name }) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      </form>
    </PlanContext>
  );
}

/** Designs a side-by-side trial: a form that draws its jars while it is filled in, and is kept as a draft until it is saved. */
export function PlanPage() {
  const kitchen = useAnswer('kitchen:open', {});
  const bases = useAnswer('bases:list', {});
  const pantry = useAnswer('pantry:list', {});
  const kept = usePlanDraft(kitchen.data?.measures);
  const measures = useMemo(() => measuresOf(kitchen.data?.measures ?? 'metric'), [kitchen.data?.measures]);
  return (
    <>
      <PageHead above={<Link href="/trials">{phrase`Trials`}</Link>} title={words.title} lead={words.lead} />
      <Answer of={bases}>
        {({ bases: all }) => (
          <Answer of={pantry}>
            {({ ingredients }) =>
              kept.draft === null ? (
                <p className="answer-pending soft" role="status">{phrase`Reading…`}</p>
              ) : (
                <PlanForm kept={kept} draft={kept.draft} bases={all} pantry={ingredients} measures={measures} />
              )
            }
          </Answer>
        )}
      </Answer>
    </>
  );
}
