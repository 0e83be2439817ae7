import { formulaOfJar } from '#core/recipe/formula-of-jar.ts';
import { ingredientName } from '#core/trial/formula.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Draft = ValueOf<'recipes:preview'>;

/** The formula twice: for each litre of base, and for the vessel it was tried in. */
export function PerLitreTable({
  version,
  measures,
}: {
  readonly version: Pick<Draft, 'formula' | 'base_mL' | 'volume_mL'>;
  readonly measures: Measures;
}) {
  const perLitre = formulaOfJar(version.formula, version.base_mL, 'base').additions;
  const lines = version.formula.additions.map((addition, place) => ({
    key: `${place}`,
    name: `${ingredientName(addition.ingredient)}${addition.asWritten === undefined ? '' : ` (${addition.asWritten})`}`,
    state: addition.state,
    perLitre: measures.mass(perLitre[place]?.amount_g_per_L ?? 0),
    perVessel: measures.mass(addition.mass_g),
  }));
  const base = {
    key: 'base',
    name: phrase`Base`,
    state: null,
    perLitre: measures.volume(1000),
    perVessel: measures.volume(version.base_mL),
  };
  const makes = {
    key: 'makes',
    name: phrase`Makes about`,
    state: null,
    perLitre: measures.volume((1000 * version.volume_mL) / version.base_mL),
    perVessel: measures.volume(version.volume_mL),
  };
  const none = { key: 'none', name: words.nothingAdded, state: null, perLitre: '–', perVessel: '–' };
  return (
    <DataTable
      caption={phrase`The formula per litre of base and per vessel`}
      rows={[base, ...(lines.length === 0 ? [none] : lines), makes]}
      rowKey={({ key }) => key}
      columns={[
        {
          head: phrase`What`,
          cell: ({ name, state }) => (state === null || name.includes(state) ? name : `${name}, ${state}`),
        },
        { head: phrase`Per litre of base`, cell: (line) => line.perLitre, isFigure: true },
        { head: phrase`Per vessel`, cell: (line) => line.perVessel, isFigure: true },
      ]}
    />
  );
}
