import type { InputOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Writer } from '#store/writer.ts';
import { draftVersion } from './draft-version.ts';

/**
 * Writes a level as a new version of the house recipe of that name, with the chain back to trial, jars and tastings.
 *
 * @throws Failure `not-found` for an unknown trial or level, `refused` when none of its jars was started and kept
 */
export function insertVersion(
  writer: Writer,
  kitchen: Kitchen,
  input: InputOf<'recipes:promote'>,
): { recipe: string; version: number } {
  const { draft, sources } = draftVersion(writer, kitchen, input);
  const known = writer.one<{ id: string }>('SELECT id FROM house_recipes WHERE name = ? COLLATE NOCASE', input.name);
  const recipe = known?.id ?? writer.insert('house_recipes', { name: input.name, note: null }).id;
  const latest = writer.one<{ n: number | null }>(
    'SELECT max(number) AS n FROM recipe_versions WHERE recipe_id = ?',
    recipe,
  );
  const version = writer.insert('recipe_versions', {
    recipe_id: recipe,
    number: (latest?.n ?? 0) + 1,
    formula: JSON.stringify(draft.formula),
    base_mL: draft.base_mL,
    volume_mL: draft.volume_mL,
    vessel: JSON.stringify(draft.vessel),
    target: JSON.stringify(draft.target),
    basis: draft.basis,
    trial_id: draft.chain.trial?.id ?? null,
    level_id: draft.chain.level?.id ?? null,
    why: input.why ?? null,
  });
  for (const { jar, tasting } of sources) {
    writer.insert('version_sources', { version_id: version.id, jar_id: jar, tasting_id: tasting });
  }
  return { recipe, version: version.number };
}
