import { useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type BottleSource, BottlingForm } from './bottling-form.tsx';
import { BottlingRow } from './bottling-row.tsx';
import { words } from './words.ts';

/** The button that bottles a jar or a batch, with its form. */
export function BottleIt({ source }: { readonly source: BottleSource }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <>
      <Button aria-label={words.fillOf(source.name)} onClick={() => setIsOpen(true)}>
        {words.fill}
      </Button>
      {isOpen ? (
        <Sheet title={words.fillOf(source.name)} onClose={() => setIsOpen(false)}>
          <BottlingForm source={source} onDone={() => setIsOpen(false)} />
        </Sheet>
      ) : null}
    </>
  );
}

/** The bottles of one jar: a section of its page. A jar that never stood, or was thrown away, is not bottled. */
export function BottlesOfJar({ jar }: { readonly jar: ValueOf<'jars:open'>['jar'] }) {
  const bottles = useAnswer('bottles:list', { jar: jar.id });
  if (jar.state === 'planned') return null;
  const source = { owner: { jar: jar.id }, name: phrase`jar ${jar.label}` };
  return (
    <section className="section">
      <div className="section-head">
        <h2>
          <Explained words={words.title} />
        </h2>
        {jar.state === 'discarded' ? null : <BottleIt source={source} />}
      </div>
      <Answer of={bottles}>
        {({ bottlings }) =>
          bottlings.length === 0 ? (
            <p className="soft">
              <Explained words={words.none} />
            </p>
          ) : (
            <RowList label={words.title}>
              {bottlings.map((bottling) => (
                <BottlingRow key={bottling.id} bottling={bottling} />
              ))}
            </RowList>
          )
        }
      </Answer>
    </section>
  );
}
