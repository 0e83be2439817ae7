import { useRequest } from '#renderer/app/use-request.ts';
import { counted } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';

/** Fills an empty kitchen with the invented example. Only offered where nothing is there yet: the desk refuses otherwise. */
export function SampleKitchenButton() {
  const { mutate, isPending } = useRequest('kitchen:sample', {
    done: ({ rows }) => `The sample kitchen is here: ${counted(rows, 'row')}, all marked as sample.`,
  });
  return (
    <Button disabled={isPending} onClick={() => mutate({})}>
      {isPending ? 'Laying the table…' : 'Start from the sample kitchen'}
    </Button>
  );
}
