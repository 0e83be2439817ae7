import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { CompositionPart } from './composition-part.tsx';
import type { Ingredient } from './ingredient-words.ts';
import { measureLines, readMeasures } from './read-measures.ts';
import { type CompositionField, compositionFields, useComposition } from './use-composition.ts';
import { words } from './words.ts';

/** The owner's own figures of an ingredient that came with the program. */
export function FiguresForm({ row, onDone }: { readonly row: Ingredient; readonly onDone: () => void }) {
  const own = (field: CompositionField) => (row.ownFigures.includes(field) ? row[field] : null);
  const composition = useComposition({
    water_g: own('water_g'),
    sugars_g: own('sugars_g'),
    glucose_g: own('glucose_g'),
    fructose_g: own('fructose_g'),
    sucrose_g: own('sucrose_g'),
  });
  const [measures, setMeasures] = useState(row.ownFigures.includes('measures') ? measureLines(row.measures) : '');
  const [source, setSource] = useState(row.ownSource ?? '');
  const [isTried, setIsTried] = useState(false);
  const save = useRequest('pantry:figures', { done: () => words.form.figuresKept(row.name), showsFailure: true });
  const read = readMeasures(measures);
  const isGiven = Object.keys(composition.given).length > 0 || measures.trim() !== '';
  const isSourceMissing = isGiven && source.trim() === '';

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (!composition.isClear || !read.ok || isSourceMissing) return;
    save.mutate(
      {
        name: row.name,
        ...composition.given,
        ...(read.measures.length === 0 ? {} : { measures: read.measures }),
        ...(source.trim() === '' ? {} : { source: source.trim() }),
      },
      { onSuccess: onDone },
    );
  }

  const elsewhere = faultElsewhere(save.error, [...compositionFields, 'measures', 'source']);
  return (
    <form className="form" onSubmit={send} noValidate>
      <p className="soft">
        <Explained words={words.figuresLead} />
      </p>
      <CompositionPart
        composition={composition}
        measures={measures}
        setMeasures={setMeasures}
        measuresFault={isTried && !read.ok ? read.message : undefined}
        source={source}
        setSource={setSource}
        sourceFault={isTried && isSourceMissing ? words.form.sourceMissing : undefined}
        isTried={isTried}
        error={save.error}
      />
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={save.isPending}>
          {words.form.keep}
        </Button>
      </div>
    </form>
  );
}
