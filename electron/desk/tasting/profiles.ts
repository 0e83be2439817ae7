import { profileWinner } from '#core/panel/compare/profile-winner.ts';
import { panelErrors } from '#core/panel/panel-errors.ts';
import { phrase } from '#core/words/phrase.ts';
import { defaultAttributes } from '#shared/default-attributes.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { countedScores } from '#store/rows/set-asides.ts';
import { type NamedScore, scalesOfTrial } from '#store/rows/tastings.ts';
import { levelsOfTrial } from '#store/rows/trials.ts';
import type { Row } from '#store/tables.ts';
import { remembered } from '../findings/remembered-analysis.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';

function wishesOf(kitchen: Kitchen, trial: string): Row<'wishes'>[] {
  return kitchen.read.all<Row<'wishes'>>('SELECT * FROM wishes WHERE trial_id = ? ORDER BY created_at, id', trial);
}

type Wish = Pick<Row<'wishes'>, 'attribute' | 'goal' | 'low' | 'high' | 'target' | 'importance'>;

function wishText({ attribute, goal, low, high, target, importance }: Wish): string {
  return JSON.stringify([attribute, goal, low, high, target, importance]);
}

/** What was wanted of a trial at a moment, read back from the change log. */
function wishesAt(kitchen: Kitchen, trial: string, moment: string): Row<'wishes'>[] {
  const changes = kitchen.read.all<{ row_id: string; after: string | null }>(
    `SELECT c.row_id, c.after FROM changes AS c JOIN steps AS s ON s.id = c.step_id
     WHERE c.table_name = 'wishes' AND s.at <= ? ORDER BY c.id`,
    moment,
  );
  const rows = new Map(changes.map(({ row_id, after }) => [row_id, after]));
  return [...rows.values()]
    .flatMap((text) => (text === null ? [] : [JSON.parse(text) as Row<'wishes'>]))
    .filter(({ trial_id }) => trial_id === trial);
}

/** Wishes said, changed or dropped after codes had been seen are not wrong, but the reader must know. */
function setAfterReveal(kitchen: Kitchen, trial: string, wishes: readonly Row<'wishes'>[]): boolean {
  const first = kitchen.read.one<{ at: string | null }>(
    'SELECT min(closed_at) AS at FROM tastings WHERE trial_id = ?',
    trial,
  )?.at;
  if (first == null || wishes.length === 0) return false;
  const then = wishesAt(kitchen, trial, first).map(wishText).sort();
  return JSON.stringify(then) !== JSON.stringify(wishes.map(wishText).sort());
}

/** What can be wished for: the attributes of the trial's tastings, or those a tasting asks for unless told otherwise. */
function attributesToWish(kitchen: Kitchen, trial: string): { name: string; low: number; high: number }[] {
  const asked = kitchen.read.all<{ name: string; low: number; high: number }>(
    `SELECT a.name, min(a.low) AS low, max(a.high) AS high FROM attributes AS a JOIN tastings AS g ON g.id = a.tasting_id
     WHERE g.trial_id = ? AND a.kind = 'scale' GROUP BY a.name ORDER BY min(a.position), a.name`,
    trial,
  );
  return asked.length > 0 ? asked : defaultAttributes.map(({ name, low, high }) => ({ name, low, high }));
}

/** `profiles[taster][level][wish]`: each taster's mean. */
function tasterProfiles(scores: readonly NamedScore[], levels: readonly string[], attributes: readonly string[]) {
  const tasters = [...new Set(scores.map(({ taster }) => taster))];
  return tasters.map((taster) =>
    levels.map((level) =>
      attributes.map((attribute) => {
        const own = scores.filter(
          (each) => each.taster === taster && each.sample === level && each.attribute === attribute,
        );
        return own.length === 0 ? null : own.reduce((sum, { score }) => sum + score, 0) / own.length;
      }),
    ),
  );
}

/** How a panel scores is told by its latest tastings; ten years of them would say little more and take minutes. */
const experienceTastings = 6;

export const profileHandlers: Handlers<
  'profiles:open' | 'profiles:save' | 'profiles:judge' | 'tasters:setAside' | 'tasters:bringBack' | 'panel:experience'
> = {
  'profiles:open'(kitchen, { trial }) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const wishes = wishesOf(kitchen, trial);
    return {
      wishes: wishes.map(({ attribute, goal, low, high, target, importance }) => ({
        attribute,
        goal: goal as 'more' | 'less' | 'target',
        low,
        high,
        target,
        importance,
      })),
      attributes: attributesToWish(kitchen, trial),
      closedTastings:
        kitchen.read.one<{ n: number }>(
          'SELECT count(*) AS n FROM tastings WHERE trial_id = ? AND closed_at IS NOT NULL',
          trial,
        )?.n ?? 0,
      setAfterReveal: setAfterReveal(kitchen, trial, wishes),
    };
  },
  'profiles:save'(kitchen, { trial, wishes }) {
    const row = found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const before = wishesOf(kitchen, trial);
    const wanted = wishes.map((wish) => ({ ...wish, target: wish.target ?? null }));
    if (JSON.stringify(before.map(wishText).sort()) === JSON.stringify(wanted.map(wishText).sort())) {
      return { wishes: wishes.length };
    }
    return kitchen.write(
      { request: 'profiles:save', summary: phrase`Say what is wanted in “${row.question}”` },
      (writer) => {
        for (const { id, attribute } of before) {
          if (!wanted.some((wish) => wish.attribute === attribute)) writer.remove('wishes', id);
        }
        for (const wish of wanted) {
          const standing = before.find(({ attribute }) => attribute === wish.attribute);
          if (standing === undefined) writer.insert('wishes', { trial_id: trial, ...wish });
          else if (wishText(standing) !== wishText(wish)) writer.update('wishes', standing.id, wish);
        }
        return { wishes: wishes.length };
      },
    );
  },
  'profiles:judge'(kitchen, { trial, draws, seed }, watch) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const wishes = wishesOf(kitchen, trial);
    const levels = levelsOfTrial(kitchen.read, trial).map(({ name }) => name);
    const attributes = wishes.map(({ attribute }) => attribute);
    const late = setAfterReveal(kitchen, trial, wishes);
    const profiles = tasterProfiles(countedScores(kitchen.read, trial), levels, attributes);
    const nothing = (needs: string) => ({ levels: [], winner: null, setAfterReveal: late, needs });
    if (wishes.length === 0)
      return nothing(phrase`Say what is wanted first: more, less, or a target for each attribute.`);
    if (profiles.length < 2) return nothing(phrase`A second taster’s scores are needed to draw the panel again.`);
    const judged = profileWinner({
      profiles,
      goals: wishes.map(({ goal, low, high, target, importance }) => ({
        goal: goal as 'more' | 'less' | 'target',
        low,
        high,
        importance,
        ...(target === null ? {} : { target }),
      })),
      draws,
      seed,
      onProgress(done, of) {
        watch.assertGoing();
        watch.progress(done, of);
        return true;
      },
    });
    return {
      levels: levels.map((level, place) => ({
        level,
        desirability: judged.desirability[place] ?? null,
        low: judged.low[place] ?? null,
        high: judged.high[place] ?? null,
        winShare: judged.winShare[place] ?? 0,
      })),
      winner: judged.winner === null ? null : (levels[judged.winner] ?? null),
      setAfterReveal: late,
      needs: null,
    };
  },
  'tasters:setAside'(kitchen, { trial, taster, reason }) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const row = found(kitchen.read.row('tasters', taster), 'taster', 'taster');
    const before = kitchen.read.one<{ id: string }>(
      'SELECT id FROM set_asides WHERE trial_id = ? AND taster_id = ?',
      trial,
      taster,
    );
    return kitchen.write(
      { request: 'tasters:setAside', summary: phrase`Set ${row.name} aside: ${reason}` },
      (writer) => {
        if (before === undefined) writer.insert('set_asides', { trial_id: trial, taster_id: taster, reason });
        else writer.update('set_asides', before.id, { reason });
        return { taster };
      },
    );
  },
  'tasters:bringBack'(kitchen, { trial, taster }) {
    const row = found(kitchen.read.row('tasters', taster), 'taster', 'taster');
    const before = kitchen.read.one<{ id: string }>(
      'SELECT id FROM set_asides WHERE trial_id = ? AND taster_id = ?',
      trial,
      taster,
    );
    if (before === undefined)
      throw new Failure('not-found', phrase`${row.name} is not set aside in this trial.`, ['taster']);
    return kitchen.write({ request: 'tasters:bringBack', summary: phrase`Count ${row.name} again` }, (writer) => {
      writer.remove('set_asides', before.id);
      return { taster };
    });
  },
  'panel:experience'(kitchen) {
    const trials = kitchen.read.all<{ id: string; n: number }>(
      `SELECT trial_id AS id, count(*) AS n FROM
         (SELECT trial_id FROM tastings WHERE closed_at IS NOT NULL AND trial_id IS NOT NULL ORDER BY held_at DESC, id DESC LIMIT ?)
       GROUP BY trial_id`,
      experienceTastings,
    );
    let squares = 0;
    let freedom = 0;
    for (const { id } of trials) {
      const scales = scalesOfTrial(kitchen.read, id);
      const scores = countedScores(kitchen.read, id);
      for (const { attribute, error, tasterBySample, dfError } of remembered('errors', { scores }, panelErrors)) {
        const [low, high] = scales[attribute] ?? [0, 10];
        // On a scale of another length an error counts in proportion.
        const onTen = (error + (tasterBySample ?? 0)) * (10 / (high - low)) ** 2;
        squares += onTen * dfError;
        freedom += dfError;
      }
    }
    const tastings = trials.reduce((sum, { n }) => sum + n, 0);
    return {
      errorSd: freedom > 0 && squares > 0 ? Math.sqrt(squares / freedom) : null,
      tastings,
      degreesOfFreedom: freedom,
    };
  },
};
