import { needBasis } from '#core/trial/need.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { useJarAct } from '#renderer/parts/jar-work/use-jar-act.ts';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { type Need, needOf } from './need.ts';
import { needWords } from './words.ts';

/** Does what a need asks for in one touch, and says so with the way back. */
export function useNeedAct(): { readonly act: (need: Need) => void; readonly isBusy: boolean } {
  const sayWithUndo = useSayWithUndo();
  const jarAct = useJarAct();
  const look = useRequest('jars:look');
  const strain = useRequest('bases:strain');
  const feed = useRequest('cultures:log');

  function act(need: Need): void {
    const { kind, jars, base, culture } = need;
    const saysDone = { onSuccess: () => void sayWithUndo(needWords[kind].done(needOf(need))) };
    if (kind === 'start' || kind === 'pull') {
      jarAct.act(
        kind,
        jars.map(({ id, name }) => ({ id, label: name })),
      );
    } else if (kind === 'look' || kind === 'stir') {
      look.mutate({ jars: jars.map(({ id }) => id), what: kind === 'stir' ? 'stirred' : 'looked' }, saysDone);
    } else if (base !== null) {
      strain.mutate({ base: base.id }, saysDone);
    } else if (culture !== null) {
      const what = need.basis === needBasis.revive ? 'revival-feed' : 'refreshed';
      feed.mutate({ culture: culture.id, what }, saysDone);
    }
  }
  return { act, isBusy: jarAct.isBusy || look.isPending || strain.isPending || feed.isPending };
}
