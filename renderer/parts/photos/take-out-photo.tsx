import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Photo = ValueOf<'photos:ofJar'>['photos'][number];

/** Takes a photo out; its row goes to the bin. */
export function TakeOutPhoto({ photo, what }: { readonly photo: Photo; readonly what: string }) {
  const sayWithUndo = useSayWithUndo();
  const remove = useRequest('photos:remove');
  return (
    <Button
      weight="quiet"
      disabled={remove.isPending}
      aria-label={words.removeOf(what)}
      onClick={() => remove.mutate({ photo: photo.id }, { onSuccess: () => void sayWithUndo(words.removed) })}
    >
      {words.remove}
    </Button>
  );
}
