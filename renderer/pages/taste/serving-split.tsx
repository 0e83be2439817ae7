import { useAnswer } from '#renderer/app/use-answer.ts';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { OrderBalance } from '#renderer/parts/order-balance/order-balance.tsx';
import { usualError } from '#renderer/parts/panel-sight/panel-sight-words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { words } from './words.ts';

interface ServingSplitProps {
  /** Labels of the jars chosen. */
  readonly jars: readonly string[];
  readonly tasters: number;
  readonly replicates: number;
  readonly seed: number;
}

/** The sittings that the samples are spread over, and how even the orders are: those that will be drawn. */
export function ServingSplit({ jars, tasters, replicates, seed }: ServingSplitProps) {
  const isAsked = jars.length >= 2 && tasters >= 1;
  const design = useAnswer(
    'panel:design',
    { samples: [...jars], tasters: Math.max(1, tasters), replicates, errorSd: usualError, difference: 2, seed },
    { enabled: isAsked, keepLast: true },
  );
  if (!isAsked || design.data === undefined) return null;
  const sizes = design.data.sittings.map(({ orders }) => orders[0]?.length ?? 0);
  const isSplit = sizes.length > replicates;
  return (
    <section className="subsection">
      <h2>
        <Explained words={words.sittings} />
      </h2>
      {isSplit ? <Caution>{words.manySamples(jars.length, sizes.length / replicates)}</Caution> : null}
      {sizes.length > 1 ? (
        <ol className="sitting-list">
          {sizes.map((size, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: sittings are known by their place
            <li key={place}>{words.sittingSize(place + 1, size)}</li>
          ))}
        </ol>
      ) : (
        <p>{words.oneSitting(jars.length)}</p>
      )}
      <OrderBalance orders={design.data.sittings.flatMap(({ orders }) => orders)} />
    </section>
  );
}
