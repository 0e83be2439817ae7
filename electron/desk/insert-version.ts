import type { InputOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Reader } from '#store/reader.ts';
import { findTrial, type TrialWhole } from '#store/trials.ts';
import type { Writer } from '#store/writer.ts';
import { found } from './found.ts';
import { compositionIn, jarVolumeIn } from './pantry-lookup.ts';
import { panelTarget, sipTarget } from './version-target.ts';

type Level = TrialWhole['levelsWhole'][number];
type Jar = TrialWhole['jarsWhole'][number];

/** The level a version comes from and its jars that were started and kept. */
function sources(trial: TrialWhole, asked: string): { level: Level; jars: Jar[] } {
  const level = trial.levelsWhole.find(({ id, name }) => name === asked || id === asked);
  if (level === undefined) {
    const names = trial.levelsWhole.map(({ name }) => name).join(', ');
    throw new Failure('not-found', `This trial has no level “${asked}”; it has ${names}.`, ['level']);
  }
  const kept = ({ state, startedAt }: Jar) => state !== 'discarded' && startedAt !== null;
  const jars = trial.jarsWhole.filter((jar) => jar.level === level.id && kept(jar));
  if (jars.length === 0) {
    const message = `No jar of “${level.name}” was started and kept, so there is nothing to promote yet.`;
    throw new Failure('refused', message, ['level']);
  }
  return { level, jars };
}

function closedTastingsOf(read: Reader, jar: string): string[] {
  return read
    .all<{ id: string }>(
      `SELECT g.id FROM samples AS s JOIN tastings AS g ON g.id = s.tasting_id
       WHERE s.jar_id = ? AND g.closed_at IS NOT NULL ORDER BY g.held_at`,
      jar,
    )
    .map(({ id }) => id);
}

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
  const trial = found(findTrial(writer, input.trial), 'trial', 'trial');
  const { level, jars } = sources(trial, input.level);
  const ids = jars.map(({ id }) => id);
  const fromPanel = panelTarget(writer, trial.id, level.name);
  const fromSips = sipTarget(writer, ids);
  const { volume_mL } = jarVolumeIn(compositionIn(kitchen))(trial.baseEach_mL, level.formula.additions);
  const known = writer.one<{ id: string }>('SELECT id FROM house_recipes WHERE name = ? COLLATE NOCASE', input.name);
  const recipe = known?.id ?? writer.insert('house_recipes', { name: input.name, note: null }).id;
  const latest = writer.one<{ n: number | null }>(
    'SELECT max(number) AS n FROM recipe_versions WHERE recipe_id = ?',
    recipe,
  );
  const version = writer.insert('recipe_versions', {
    recipe_id: recipe,
    number: (latest?.n ?? 0) + 1,
    formula: JSON.stringify(level.formula),
    base_mL: trial.baseEach_mL,
    volume_mL,
    vessel: JSON.stringify(trial.vessel),
    target: JSON.stringify(fromPanel.length > 0 ? fromPanel : fromSips),
    basis: fromPanel.length > 0 ? 'panel' : fromSips.length > 0 ? 'sips' : 'none',
    trial_id: trial.id,
    level_id: level.id,
    why: input.why ?? null,
  });
  for (const jar of ids) {
    const tastings = closedTastingsOf(writer, jar);
    for (const tasting of tastings.length > 0 ? tastings : [null]) {
      writer.insert('version_sources', { version_id: version.id, jar_id: jar, tasting_id: tasting });
    }
  }
  return { recipe, version: version.number };
}
