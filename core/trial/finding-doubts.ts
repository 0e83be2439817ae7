import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import { phrase } from '#core/words/phrase.ts';
import { bestLevelWords } from './best-level-words.ts';
import { type Factor, isOrdered } from './factor.ts';
import { type FindingFrame, speaksOfLevels, sureEnough } from './finding-frame.ts';
import { capitalised, countWords, listed, pointsWords, rangeWords } from './finding-words.ts';
import { unseenGap } from './unseen-gap.ts';

const spokenOf: Readonly<Record<Factor, string>> = {
  get fruit() {
    return phrase`of these fruits`;
  },
  get amount() {
    return phrase`of amounts`;
  },
  get days() {
    return phrase`of days`;
  },
  get state() {
    return phrase`of fresh and frozen`;
  },
  get cover() {
    return phrase`of covers`;
  },
  get temperature() {
    return phrase`of warmth`;
  },
  get formula() {
    return phrase`of these formulas`;
  },
};

/** With one jar a level nothing can be said of the factor in general. */
export function oneJarDoubt(factor: Factor): string {
  const general = isOrdered(factor) ? phrase`${spokenOf[factor]} in general` : spokenOf[factor];
  return phrase`One jar for each level: this speaks of these jars. To speak ${general}, fill two jars or more for each level.`;
}

/** Those whose distance from the leader leaves room for luck. */
function rivals(attribute: AttributeAnalysis, leader: string): string[] {
  return (attribute.pairs ?? []).flatMap(({ a, b, difference, low, high }) => {
    if ((a !== leader && b !== leader) || low > 0 || high < 0) return [];
    const isFirst = a === leader;
    const ends = isFirst ? ([low, high] as const) : ([-high, -low] as const);
    return [phrase`“${isFirst ? b : a}” (${pointsWords(difference)}, 95 % interval ${rangeWords(...ends)})`];
  });
}

/** What a very small panel can't tell; nothing for four tasters or more. */
export function fewTasters(tasters: number): string[] {
  if (tasters === 1) {
    return [
      phrase`One taster tells what one person found. How others would find it, and how much of it is that person’s day, takes a second taster and more.`,
    ];
  }
  if (tasters > 3) return [];
  return [
    phrase`Only ${countWords(tasters)} tasters: only large gaps can show, and it tells about these ${countWords(tasters)} more than about your guests.`,
  ];
}

/**
 * The doubts that belong to a finding, the gravest first: few tasters, what could have been seen, rivals the leader is not clear of, where the curve's top lies,
 * one jar a level, scores that are missing.
 *
 * @param leader the level named as best; null when none was
 */
export function findingDoubts(attribute: AttributeAnalysis, frame: FindingFrame, leader: string | null): string[] {
  const doubts = fewTasters(attribute.tasters);
  const gap = leader === null ? unseenGap(attribute) : null;
  if (gap !== null) {
    const panel = phrase`${capitalised(countWords(attribute.tasters))} tasters`;
    doubts.push(
      phrase`${panel} could most likely only have shown a gap in ${attribute.attribute} of about ${pointsWords(gap)} or more.`,
    );
  }
  if (leader === null && attribute.test !== null && attribute.test.p < sureEnough) {
    const name = attribute.attribute;
    doubts.push(phrase`Taken alone, ${name} would stand clear; among this many attributes luck easily sets one apart.`);
  }
  const close = leader === null ? [] : rivals(attribute, leader);
  if (close.length > 0) doubts.push(phrase`Its lead may still be luck against ${listed(close)}.`);
  const top = leader === null || attribute.trend === null ? null : bestLevelWords(attribute.trend, frame.factor);
  if (top !== null) doubts.push(phrase`A smooth curve through the levels is highest ${top}.`);
  if (frame.replicates === 1) {
    doubts.push(oneJarDoubt(frame.factor));
  } else if (!speaksOfLevels(attribute, frame)) {
    doubts.push(
      phrase`Jars of one level differed too, about as much as the levels did or too few were tasted to tell: this speaks of these jars.`,
    );
  }
  if (attribute.missing > 0) {
    doubts.push(
      attribute.missing === 1 ? phrase`1 score is missing.` : phrase`${attribute.missing} scores are missing.`,
    );
  }
  return doubts;
}
