import type { PanelAnalysis } from '#core/panel/panel-analysis.ts';
import { findingAgainstControl } from '#core/trial/finding-against-control.ts';
import { type FindingFrame, sureEnough } from '#core/trial/finding-frame.ts';
import { findingHeadline } from '#core/trial/finding-headline.ts';
import { findingSentence } from '#core/trial/finding-sentence.ts';
import { adjustedChances, surenessOf } from '#core/trial/finding-sureness.ts';
import { takenOutSentence } from '#core/trial/taken-out-sentence.ts';
import { tasterSentences } from '#core/trial/taster-sentences.ts';
import type { Reader } from '#store/reader.ts';
import { countedScores, setAsidesOf } from '#store/rows/set-asides.ts';
import { takenOutOfTrial } from '#store/rows/taken-out.ts';
import { type NamedScore, revealedScores, scalesOfTrial } from '#store/rows/tastings.ts';
import { findTrial } from '#store/rows/trials.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { analyseWatched } from '../tasting/panel.ts';
import { levelNumbers } from './level-numbers.ts';
import { rememberedAnalysis } from './remembered-analysis.ts';

/** What each taster's scores say of their form, in words, and whether they count. */
function tastersOf(analysis: PanelAnalysis | null, read: Reader, trial: string) {
  const asides = new Map(setAsidesOf(read, trial).map((aside) => [aside.name, aside.reason]));
  const names = [...new Set((analysis?.tasters ?? []).map(({ taster }) => taster))];
  return names.flatMap((name) => {
    const id = read.one<{ id: string }>('SELECT id FROM tasters WHERE name = ?', name)?.id;
    const forms = (analysis?.tasters ?? []).filter(({ taster }) => taster === name);
    return id === undefined
      ? []
      : [{ id, name, words: tasterSentences(name, forms), setAside: asides.get(name) ?? null }];
  });
}

export const findingHandlers: Handlers<'findings:read'> = {
  'findings:read'(kitchen, { trial: id }, watch) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    const everybody = revealedScores(kitchen.read, id);
    const scores = countedScores(kitchen.read, id);
    const closed = kitchen.read.one<{ n: number }>(
      `SELECT count(DISTINCT g.id) AS n FROM tastings AS g JOIN samples AS s ON s.tasting_id = g.id JOIN jars AS j ON j.id = s.jar_id
       WHERE j.trial_id = ? AND g.closed_at IS NOT NULL`,
      id,
    );
    const levels = levelNumbers(trial);
    const control = trial.levelsWhole.find(({ isControl }) => isControl)?.name ?? null;
    const scales = scalesOfTrial(kitchen.read, id);
    const liking = everybody.find(({ attribute }) => attribute.toLowerCase() === 'liking')?.attribute ?? null;
    const analysed = (counted: readonly NamedScore[]): PanelAnalysis | null =>
      counted.length === 0
        ? null
        : rememberedAnalysis(
            {
              scores: counted,
              ...(control === null ? {} : { control }),
              ...(levels === null ? {} : { levels }),
              scales,
              liking: liking ?? 'liking',
            },
            (input) => analyseWatched(input, watch),
          );
    const analysis = analysed(scores);
    const attributes = analysis?.attributes ?? [];
    const frame: FindingFrame = { factor: trial.factor, control, replicates: trial.replicates, scales };
    const chances = adjustedChances(attributes);
    // Whoever is set aside is still heard: the finding with everybody stands beside the one without.
    const whole = everybody.length === scores.length ? analysis : analysed(everybody);
    return {
      trial: id,
      tastings: closed?.n ?? 0,
      scores,
      takenOut: takenOutOfTrial(kitchen.read, id).map((out) => ({ ...out, sentence: takenOutSentence(out) })),
      levels,
      scales,
      control,
      liking,
      analysis,
      tasters: tastersOf(whole, kitchen.read, id),
      withEverybody:
        whole === analysis ? null : (findingHeadline(whole?.attributes ?? [], liking, frame)?.sentence ?? null),
      headline: findingHeadline(attributes, liking, frame),
      sentences: attributes.map((attribute) => {
        const chance = chances.get(attribute.attribute) ?? null;
        return {
          attribute: attribute.attribute,
          sentence: findingSentence(attribute, frame, chance),
          againstControl: findingAgainstControl(attribute, control, chance !== null && chance < sureEnough),
          sureness: surenessOf(chance),
          chance,
        };
      }),
    };
  },
};
