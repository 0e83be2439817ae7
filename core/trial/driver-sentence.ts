import { fewestSamplesForDrivers, type LikingDriver } from '#core/panel/tasters/liking-drivers.ts';
import type { MovingPair } from '#core/panel/tasters/moving-together.ts';
import { phrase } from '#core/words/phrase.ts';
import { sureEnough } from './finding-frame.ts';
import { capitalised, countWords, pointsWords, rangeWords } from './finding-words.ts';

/** Why a panel can't say what drives its liking; jars counted as they were tasted. */
export function driversNeed(jars: number, tasters: number): string | null {
  if (tasters < 2)
    return phrase`One taster can’t tell what drives a panel’s liking: a second one, and more, are needed.`;
  if (jars >= fewestSamplesForDrivers) return null;
  const seen = jars === 1 ? phrase`one jar` : phrase`${countWords(jars)} jars`;
  return phrase`With ${seen} it can’t be told what drives liking: whatever happens to differ between them would seem to. It takes ${countWords(fewestSamplesForDrivers)} jars or more.`;
}

/**
 * How liking moved with one attribute, in a sentence a cook understands.
 *
 * @param attribute as the panel read it, such as "tang"
 * @param chance of luck alone, adjusted for the number of attributes looked at
 * @returns size in points, interval and doubt; no bare p
 */
export function driverSentence(attribute: string, driver: LikingDriver, chance: number): string {
  const range = rangeWords(driver.low, driver.high);
  if (chance >= sureEnough) {
    return phrase`Whether ${attribute} moved liking can’t be told: each point more of it went with anything from ${range} points of liking.`;
  }
  const way = driver.slope >= 0 ? phrase`more` : phrase`less`;
  const ends = driver.slope >= 0 ? range : rangeWords(-driver.high, -driver.low);
  const own = driver.tasters.map(({ slope }) => slope);
  const against = own.filter((slope) => Math.sign(slope) !== Math.sign(driver.slope)).length;
  const differing =
    against === 0 ? '' : phrase` ${capitalised(countWords(against))} of ${own.length} tasters went the other way.`;
  return phrase`Each point more of ${attribute} went with ${pointsWords(driver.slope)} ${way} liking (95 % interval ${ends}).${differing}`;
}

/** Attributes whose parts in liking can't be told apart. */
export function togetherSentence({ one, other, correlation }: MovingPair): string {
  const way = correlation > 0 ? phrase`rose and fell together` : phrase`moved against each other`;
  return phrase`${capitalised(one)} and ${other} ${way} over these jars: what one seems to do to liking, the other may have done.`;
}
