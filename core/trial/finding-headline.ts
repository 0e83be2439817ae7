import { shrunkenWinner } from '#core/panel/compare/shrunken-winner.ts';
import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import { phrase } from '#core/words/phrase.ts';
import { findingDoubts } from './finding-doubts.ts';
import { type FindingFrame, sureEnough } from './finding-frame.ts';
import { findingSentence } from './finding-sentence.ts';
import { adjustedChances, surenessSentence } from './finding-sureness.ts';
import { countWords, scoreWords } from './finding-words.ts';
import { leadWords, type Ranked, rankedMeans } from './lead-words.ts';

/** What a trial found, first in one sentence, then how sure it is and where its doubt lies. */
export interface FindingHeadline {
  readonly sentence: string;
  /** What did show, where liking leaves the question open. */
  readonly also: string | null;
  /** Null where nothing is clear enough to be sure of. */
  readonly sureness: string | null;
  readonly doubts: readonly string[];
  /** How it was worked out, for the small print. */
  readonly small: readonly string[];
  /** The best-liked level where the panel is sure of it, and what to expect of it next time. */
  readonly winner: { readonly level: string; readonly mean: number; readonly expected: number } | null;
}

function scoreOn(mean: number, scale: readonly [number, number] | undefined): string {
  return scale === undefined
    ? scoreWords(mean)
    : phrase`${scoreWords(mean)} on the scale from ${scale[0]} to ${scale[1]}`;
}

function openingWords(
  liking: AttributeAnalysis,
  ranked: readonly Ranked[],
  frame: FindingFrame,
  sure: boolean,
): string {
  const [top] = ranked;
  if (top === undefined) return phrase`Nobody’s liking could be averaged.`;
  const score = scoreOn(top.mean, frame.scales?.[liking.attribute]);
  const lead = leadWords(liking, ranked, frame.control);
  const name = `“${top.sample}”${top.sample === frame.control ? phrase`, the control,` : ''}`;
  if (sure) return phrase`${name} was liked best: ${score}${lead}.`;
  if (liking.tasters === 1) return phrase`${name} was liked best by the one taster: ${score}${lead}.`;
  return phrase`No jar was clearly liked best. ${name} came out highest: ${score}${lead}; that may be luck.`;
}

/** Where liking can't answer, the clearest of the other attributes does. */
function clearest(attributes: readonly AttributeAnalysis[], chances: ReadonlyMap<string, number | null>) {
  return attributes
    .map((attribute) => ({ attribute, chance: chances.get(attribute.attribute) ?? null }))
    .filter(({ chance }) => chance !== null && chance < sureEnough)
    .sort((one, other) => (one.chance ?? 1) - (other.chance ?? 1))[0];
}

/**
 * The answer to the trial's question in one sentence a cook understands: which level, by how much, how sure, and its doubt.
 *
 * Method: liking decides. The leader is named as best only when the test over all levels is clear at 5 % after Holm's adjustment over the
 * attributes asked about; what it may be expected to score is its mean drawn back by `shrunkenWinner`. Otherwise it says what the panel
 * could have seen, and what the clearest other attribute did. Leaves out p-values, and never says that nothing differs.
 *
 * @param attributes every attribute of the analysis
 * @param liking the name of the one that is liking; null when nobody scored it
 * @returns null when there is no attribute at all
 */
export function findingHeadline(
  attributes: readonly AttributeAnalysis[],
  liking: string | null,
  frame: FindingFrame,
): FindingHeadline | null {
  const [first] = attributes;
  if (first === undefined) return null;
  const chances = adjustedChances(attributes);
  const tested = [...chances.values()].filter((chance) => chance !== null).length;
  const liked = attributes.find(({ attribute }) => attribute === liking);
  const others = attributes.filter((attribute) => attribute !== liked);
  const other = clearest(others, chances);
  const also = other === undefined ? null : findingSentence(other.attribute, frame, other.chance);
  const small: string[] = [];
  if (tested > 1)
    small.push(phrase`How sure allows for ${countWords(tested)} attributes having been asked about (Holm).`);

  if (liked === undefined || rankedMeans(liked).length < 2) {
    const told = other ?? { attribute: first, chance: null };
    return {
      sentence: phrase`Nobody scored the liking of two levels, so this panel can’t say which is best.`,
      also,
      sureness: other === undefined ? null : surenessSentence(other.chance, tested, phrase`alike`),
      doubts: findingDoubts(told.attribute, frame, null),
      small,
      winner: null,
    };
  }
  const chance = chances.get(liked.attribute) ?? null;
  const sure = chance !== null && chance < sureEnough;
  const ranked = rankedMeans(liked);
  const [top] = ranked;
  const opening = openingWords(liked, ranked, frame, sure);
  const shrunk =
    sure && liked.test !== null
      ? shrunkenWinner(
          ranked.map(({ mean }) => mean),
          liked.test.f,
        )
      : null;
  const winner = shrunk === null || top === undefined ? null : { level: top.sample, mean: top.mean, ...shrunk };
  if (winner !== null) {
    const next = scoreWords(winner.expected);
    const here = scoreWords(winner.mean);
    small.push(
      next === here
        ? phrase`The best of several is partly the luckiest: next time expect about ${next} again (drawn back toward the middle of all levels).`
        : phrase`The best of several is partly the luckiest: next time expect about ${next} rather than ${here} (drawn back toward the middle of all levels).`,
    );
  }
  return {
    sentence: opening,
    also: sure ? null : also,
    sureness: surenessSentence(chance, tested, phrase`liked alike`),
    doubts: findingDoubts(liked, frame, sure ? (top?.sample ?? null) : null),
    small,
    winner: winner === null ? null : { level: winner.level, mean: winner.mean, expected: winner.expected },
  };
}
