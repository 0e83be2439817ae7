import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { ingredientKindWords } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Ingredient = ValueOf<'pantry:list'>['ingredients'][number];
type Kind = Ingredient['kind'];

const kinds = Object.keys(ingredientKindWords) as Kind[];

function gramWords(value: number | null): string {
  return value === null ? '–' : `${Number(value.toFixed(1))} g`;
}

function KindTable({ kind, rows }: { readonly kind: Kind; readonly rows: readonly Ingredient[] }) {
  if (rows.length === 0) return null;
  const name = ingredientKindWords[kind];
  return (
    <section className="section">
      <h2>{name}</h2>
      <DataTable
        caption={words.table(name)}
        rows={rows}
        rowKey={(row) => row.id ?? row.name}
        columns={[
          {
            head: 'Name',
            cell: (row) => (
              <>
                {row.name} <SampleMark when={row.isSample} />
              </>
            ),
          },
          { head: 'Sugars', cell: ({ sugars_g }) => gramWords(sugars_g), isFigure: true },
          { head: 'Water', cell: ({ water_g }) => gramWords(water_g), isFigure: true },
          { head: 'Fibre', cell: ({ fibre_g }) => gramWords(fibre_g), isFigure: true },
          { head: 'Allergens', cell: ({ allergens }) => allergens.join(', ') || '–' },
          { head: 'Source', cell: ({ source, id }) => source ?? (id === null ? '–' : words.own) },
        ]}
      />
    </section>
  );
}

/** Every ingredient, by kind, with a search that narrows as you type. */
export function PantryPage() {
  const pantry = useAnswer('pantry:list', {});
  const [sought, setSought] = useState('');
  const plain = sought.trim().toLowerCase();
  return (
    <>
      <PageHead title={words.title} lead={words.lead} />
      <Answer of={pantry}>
        {({ ingredients }) => {
          const found = ingredients.filter(({ name }) => name.toLowerCase().includes(plain));
          return (
            <>
              <div className="section pantry-search">
                <Field label={words.search} hint={words.basis}>
                  {(wiring) => (
                    <input
                      {...wiring}
                      type="search"
                      value={sought}
                      onChange={({ target }) => setSought(target.value)}
                    />
                  )}
                </Field>
              </div>
              {found.length === 0 ? <p className="soft">{words.none}</p> : null}
              {kinds.map((kind) => (
                <KindTable key={kind} kind={kind} rows={found.filter((row) => row.kind === kind)} />
              ))}
            </>
          );
        }}
      </Answer>
    </>
  );
}
