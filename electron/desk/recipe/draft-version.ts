import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Reader } from '#store/reader.ts';
import type { RecipeDraft } from '#store/rows/recipes.ts';
import { findTrial, type TrialWhole } from '#store/rows/trials.ts';
import { found } from '../found.ts';
import { compositionIn, jarVolumeIn } from '../pantry/pantry-lookup.ts';
import { panelTarget, sipTarget } from './version-target.ts';

type Level = TrialWhole['levelsWhole'][number];
type Jar = TrialWhole['jarsWhole'][number];

/** The level a version comes from and its jars that were started and kept. */
function sourcesOf(trial: TrialWhole, asked: string): { level: Level; jars: Jar[] } {
  const level = trial.levelsWhole.find(({ id, name }) => name === asked || id === asked);
  if (level === undefined) {
    const names = trial.levelsWhole.map(({ name }) => name).join(', ');
    throw new Failure('not-found', phrase`This trial has no level “${asked}”; it has ${names}.`, ['level']);
  }
  const kept = ({ state, startedAt }: Jar) => state !== 'discarded' && startedAt !== null;
  const jars = trial.jarsWhole.filter((jar) => jar.level === level.id && kept(jar));
  if (jars.length === 0) {
    const message = phrase`No jar of “${level.name}” was started and kept, so there is nothing to promote yet.`;
    throw new Failure('refused', message, ['level']);
  }
  return { level, jars };
}

interface ClosedTasting {
  readonly id: string;
  readonly name: string;
  readonly scores: number;
}

function closedTastingsOf(read: Reader, jar: string): ClosedTasting[] {
  return read.all<ClosedTasting>(
    `SELECT g.id, g.name, count(c.id) AS scores FROM samples AS s JOIN tastings AS g ON g.id = s.tasting_id
     LEFT JOIN scores AS c ON c.sample_id = s.id
     WHERE s.jar_id = ? AND s.taken_out_at IS NULL AND g.closed_at IS NOT NULL GROUP BY g.id ORDER BY g.held_at`,
    jar,
  );
}

/** Tastings named once, with the scores of all the level's jars. */
function together(tastings: readonly ClosedTasting[]): ClosedTasting[] {
  const byId = new Map<string, ClosedTasting>();
  for (const tasting of tastings) {
    byId.set(tasting.id, { ...tasting, scores: tasting.scores + (byId.get(tasting.id)?.scores ?? 0) });
  }
  return [...byId.values()];
}

/** A level as the version it would become, and the rows that it comes from. */
export interface DraftedVersion {
  readonly draft: Omit<RecipeDraft, 'cautions'>;
  readonly sources: readonly { readonly jar: string; readonly tasting: string | null }[];
}

/**
 * What a level becomes as a house recipe: its formula, its target from the panel or else from the maker's sips, and the chain back.
 *
 * @throws Failure `not-found` for an unknown trial or level, `refused` when none of its jars was started and kept
 */
export function draftVersion(
  read: Reader,
  kitchen: Kitchen,
  asked: { readonly trial: string; readonly level: string },
): DraftedVersion {
  const trial = found(findTrial(read, asked.trial), 'trial', 'trial');
  const { level, jars } = sourcesOf(trial, asked.level);
  const tasted = jars.map(({ id }) => ({ jar: id, tastings: closedTastingsOf(read, id) }));
  const fromPanel = panelTarget(read, trial.id, level.name);
  const fromSips = sipTarget(
    read,
    jars.map(({ id }) => id),
  );
  return {
    draft: {
      formula: level.formula,
      base_mL: trial.baseEach_mL,
      volume_mL: jarVolumeIn(compositionIn(kitchen))(trial.baseEach_mL, level.formula.additions).volume_mL,
      vessel: trial.vessel,
      target: fromPanel.length > 0 ? fromPanel : fromSips,
      basis: fromPanel.length > 0 ? 'panel' : fromSips.length > 0 ? 'sips' : 'none',
      base: trial.base,
      alsoHeld: trial.held.also,
      chain: {
        trial: { id: trial.id, question: trial.question },
        level: { id: level.id, name: level.name },
        jars: jars.map(({ id, label }) => ({ id, label })),
        tastings: together(tasted.flatMap(({ tastings }) => tastings)),
      },
    },
    sources: tasted.flatMap(({ jar, tastings }) => {
      const named: readonly (string | null)[] = tastings.length > 0 ? tastings.map(({ id }) => id) : [null];
      return named.map((tasting) => ({ jar, tasting }));
    }),
  };
}
