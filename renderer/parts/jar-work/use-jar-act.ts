import { useRequest } from '#renderer/app/use-request.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { joined } from '#renderer/format/words.ts';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { Jar } from './next-act.ts';
import { stockWords, type Taken } from './stock-words.ts';
import { actWords, type JarAct } from './words.ts';

/** Starts, pulls or strains jars together, and says so with the way back. */
export function useJarAct(): {
  readonly act: (kind: JarAct, jars: readonly Pick<Jar, 'id' | 'label'>[]) => void;
  readonly isBusy: boolean;
} {
  const sayWithUndo = useSayWithUndo();
  const measures = useMeasures();
  const start = useRequest('jars:start');
  const pull = useRequest('jars:pull');
  const strain = useRequest('jars:strain');
  const requests = { start, pull, strain } as const;
  return {
    isBusy: start.isPending || pull.isPending || strain.isPending,
    act: (kind, jars) =>
      requests[kind].mutate(
        { jars: jars.map(({ id }) => id) },
        {
          onSuccess: (value) => {
            const stock = 'stock' in value ? (value.stock as Taken) : [];
            const done = actWords[kind].done(joined(jars.map(({ label }) => label)));
            void sayWithUndo([done, ...stockWords(stock, measures)].join(' '));
          },
        },
      ),
  };
}
