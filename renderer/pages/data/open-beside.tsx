import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { words } from './words.ts';

/** Opens a kitchen that was just made beside this one. */
export function OpenBeside({ file }: { readonly file: string }) {
  const open = useRequest('kitchen:openBeside', { done: () => words.openedNew });
  const name = file.split(/[\\/]/).at(-1) ?? '';
  return (
    <div className="button-row">
      <Button weight="main" disabled={open.isPending} onClick={() => open.mutate({ name })}>
        {words.openNew}
      </Button>
    </div>
  );
}
