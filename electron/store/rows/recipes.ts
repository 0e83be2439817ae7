import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';

type RecipeWhole = ValueOf<'recipes:open'>;
export type RecipeDraft = ValueOf<'recipes:preview'>;
/** A stored version; its cautions are worked out by the desk. */
export type Version = Omit<RecipeWhole['versionList'][number], 'cautions'>;
type Summary = ValueOf<'recipes:list'>['recipes'][number];

type SummaryRow = Row<'house_recipes'> & { versions: number; latest: number; basis: Summary['basis'] };

const withLatest = `
  SELECT r.*, count(v.id) AS versions, max(v.number) AS latest,
    (SELECT basis FROM recipe_versions WHERE recipe_id = r.id ORDER BY number DESC LIMIT 1) AS basis
  FROM house_recipes AS r JOIN recipe_versions AS v ON v.recipe_id = r.id`;

function summaryOf(row: SummaryRow): Summary {
  return {
    id: row.id,
    isSample: row.is_sample === 1,
    name: row.name,
    versions: row.versions,
    latest: row.latest,
    basis: row.basis,
    createdAt: row.created_at,
    note: row.note,
  };
}

export function listRecipes(read: Reader): Summary[] {
  return read.all<SummaryRow>(`${withLatest} GROUP BY r.id ORDER BY r.name`).map(summaryOf);
}

function chainOf(read: Reader, row: Row<'recipe_versions'>): Version['chain'] {
  const trial = row.trial_id === null ? undefined : read.row('trials', row.trial_id);
  const level = row.level_id === null ? undefined : read.row('levels', row.level_id);
  return {
    trial: trial === undefined ? null : { id: trial.id, question: trial.question },
    level: level === undefined ? null : { id: level.id, name: level.name },
    jars: read.all(
      `SELECT DISTINCT j.id, j.label FROM version_sources AS s JOIN jars AS j ON j.id = s.jar_id
       WHERE s.version_id = ? ORDER BY j.label`,
      row.id,
    ),
    tastings: read.all(
      `SELECT g.id, g.name, count(c.id) AS scores FROM version_sources AS s JOIN tastings AS g ON g.id = s.tasting_id
       JOIN samples AS p ON p.tasting_id = g.id AND p.jar_id = s.jar_id AND p.taken_out_at IS NULL LEFT JOIN scores AS c ON c.sample_id = p.id
       WHERE s.version_id = ? GROUP BY g.id ORDER BY g.held_at`,
      row.id,
    ),
  };
}

/** What the version's trial held besides the formula, and the base it was made from. */
function heldOf(read: Reader, trialId: string | null): Pick<RecipeDraft, 'base' | 'alsoHeld'> {
  const trial = trialId === null ? undefined : read.row('trials', trialId);
  if (trial === undefined) return { base: null, alsoHeld: {} };
  const base = trial.base_id === null ? undefined : read.row('bases', trial.base_id);
  const held = JSON.parse(trial.held) as { also?: RecipeDraft['alsoHeld'] };
  return { base: base === undefined ? null : { id: base.id, name: base.name }, alsoHeld: held.also ?? {} };
}

export function versionsOf(read: Reader, recipe: string): Version[] {
  return read
    .all<Row<'recipe_versions'>>('SELECT * FROM recipe_versions WHERE recipe_id = ? ORDER BY number', recipe)
    .map((row) => ({
      id: row.id,
      number: row.number,
      createdAt: row.created_at,
      formula: JSON.parse(row.formula) as Version['formula'],
      base_mL: row.base_mL,
      volume_mL: row.volume_mL,
      vessel: JSON.parse(row.vessel) as Version['vessel'],
      target: JSON.parse(row.target) as Version['target'],
      basis: row.basis as Version['basis'],
      why: row.why,
      ...heldOf(read, row.trial_id),
      chain: chainOf(read, row),
    }));
}

export function findRecipe(
  read: Reader,
  id: string,
): (Omit<RecipeWhole, 'versionList'> & { readonly versionList: Version[] }) | undefined {
  const row = read.one<SummaryRow>(`${withLatest} WHERE r.id = ? GROUP BY r.id`, id);
  if (row === undefined) return undefined;
  return {
    ...summaryOf(row),
    versionList: versionsOf(read, id),
    batches: read.all(
      `SELECT b.id, v.number AS version, b.made_at AS madeAt, b.volume_mL, b.lot, b.note
       FROM batches AS b JOIN recipe_versions AS v ON v.id = b.version_id WHERE v.recipe_id = ? ORDER BY b.made_at DESC`,
      id,
    ),
  };
}
