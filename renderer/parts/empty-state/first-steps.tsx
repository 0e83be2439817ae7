import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { counted } from '#renderer/format/counted.ts';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';

/** Fills an empty kitchen with the invented example. Only offered where nothing is there yet: the desk refuses otherwise. */
export function SampleKitchenButton() {
  const { mutate, isPending } = useRequest('kitchen:sample', {
    done: ({ rows }) => phrase`The sample kitchen is here: ${counted(rows, 'row')}, all marked as sample.`,
  });
  return (
    <Button disabled={isPending} onClick={() => mutate({})}>
      {isPending ? phrase`Laying the table…` : phrase`Start from the sample kitchen`}
    </Button>
  );
}

/** What a kitchen without a trial can begin with: its own first plan, or a look at the example. */
export function FirstSteps() {
  return (
    <>
      <ButtonLink to="/trials/new" weight="main">{phrase`Plan your first trial`}</ButtonLink>
      <SampleOnlyWhenEmpty />
    </>
  );
}

/** The example is offered only where the desk would take it: in a kitchen that holds nothing. */
function SampleOnlyWhenEmpty() {
  const { data } = useAnswer('kitchen:open', {});
  const isEmpty = data !== undefined && Object.values(data.counts).every((count) => count === 0);
  return isEmpty ? <SampleKitchenButton /> : null;
}
