import { holm } from '#core/panel/compare/holm.ts';
import { justAboutRight } from '#core/panel/tasters/just-about-right.ts';
import { type LikingDriver, type LikingPoint, likingDriver } from '#core/panel/tasters/liking-drivers.ts';
import { movingTogether } from '#core/panel/tasters/moving-together.ts';
import { driverSentence, driversNeed, togetherSentence } from '#core/trial/driver-sentence.ts';
import { penaltyRule, penaltySentences } from '#core/trial/penalty-sentence.ts';
import { phrase } from '#core/words/phrase.ts';
import { type RightnessRow, revealedRightness } from '#store/log/revealed-answers.ts';
import { countedScores, setAsidesOf } from '#store/rows/set-asides.ts';
import type { NamedScore } from '#store/rows/tastings.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';

const alpha = 0.05;

function countsOf(rows: readonly RightnessRow[]) {
  const count = (chosen: (position: number) => boolean) => rows.filter(({ position }) => chosen(position)).length;
  return {
    answers: rows.length,
    tooLittle: count((position) => position < 0),
    right: count((position) => position === 0),
    tooMuch: count((position) => position > 0),
  };
}

function penaltiesOf(rows: readonly RightnessRow[]) {
  const answers = rows.flatMap(({ position, liking }) => (liking === null ? [] : [{ position, liking }]));
  return { answers, penalties: answers.length === 0 ? null : justAboutRight(answers, alpha) };
}

function rightnessOf(attribute: string, rows: readonly RightnessRow[]) {
  const { answers, penalties } = penaltiesOf(rows);
  return {
    attribute,
    counts: countsOf(rows),
    withoutLiking: rows.length - answers.length,
    penalties,
    sentences: penalties === null ? [] : penaltySentences(attribute, penalties),
    levels: [...Map.groupBy(rows, ({ level }) => level)].map(([level, own]) => {
      const { penalties: ofLevel } = penaltiesOf(own);
      const speaks = ofLevel !== null && (ofLevel.tooLittle.attend || ofLevel.tooMuch.attend);
      return {
        level,
        counts: countsOf(own),
        penalties: ofLevel,
        sentences: speaks ? penaltySentences(attribute, ofLevel) : [],
      };
    }),
  };
}

/** Each taster's mean for each jar. */
function jarMeans(scores: readonly NamedScore[]): Map<string, { taster: string; jar: string; mean: number }> {
  const cells = Map.groupBy(scores, ({ taster, jar }) => JSON.stringify([taster, jar]));
  return new Map(
    [...cells].map(([key, cell]) => {
      const mean = cell.reduce((sum, { score }) => sum + score, 0) / cell.length;
      return [key, { taster: cell[0]?.taster ?? '', jar: cell[0]?.jar ?? '', mean }];
    }),
  );
}

/** Each jar's mean over the panel. */
function overTasters(means: ReturnType<typeof jarMeans>): Map<string, number> {
  const jars = Map.groupBy(means.values(), ({ jar }) => jar);
  return new Map([...jars].map(([jar, own]) => [jar, own.reduce((sum, { mean }) => sum + mean, 0) / own.length]));
}

const untoldWhy = {
  get 'one-taster'() {
    return phrase`only one taster scored it beside liking`;
  },
  get 'too-few-scores'() {
    return phrase`too few jars were scored on it beside liking`;
  },
  get 'no-variation'() {
    return phrase`the scores hardly move, so nothing can move with them`;
  },
} as const;

function whyUntold(code: string): string {
  return untoldWhy[code as keyof typeof untoldWhy] ?? phrase`too few scores`;
}

function driversOf(scores: readonly NamedScore[]) {
  const attributes = Map.groupBy(scores, ({ attribute }) => attribute);
  const likingName = [...attributes.keys()].find((name) => name.toLowerCase() === 'liking');
  const nothing = (needs: string | null) => ({ drivers: [], untold: [], together: [], needs });
  if (likingName === undefined) return nothing(phrase`Nobody scored liking, so it can’t be told what drives it.`);
  const liking = jarMeans(attributes.get(likingName) ?? []);
  const jars = new Set([...liking.values()].map(({ jar }) => jar)).size;
  const needs = driversNeed(jars, new Set([...liking.values()].map(({ taster }) => taster)).size);
  if (needs !== null) return nothing(needs);
  const told: { attribute: string; driver: LikingDriver }[] = [];
  const untold: { attribute: string; why: string }[] = [];
  const means = new Map<string, Map<string, number>>();
  for (const [attribute, own] of attributes) {
    if (attribute === likingName) continue;
    const ofJars = jarMeans(own);
    means.set(attribute, overTasters(ofJars));
    const points: LikingPoint[] = [...ofJars].flatMap(([key, { taster, jar, mean }]) => {
      const beside = liking.get(key);
      return beside === undefined ? [] : [{ taster, sample: jar, liking: beside.mean, attribute: mean }];
    });
    const driver = likingDriver(points, alpha);
    if ('code' in driver) untold.push({ attribute, why: whyUntold(driver.code) });
    else told.push({ attribute, driver });
  }
  const chances = holm(told.map(({ driver }) => driver.p));
  return {
    drivers: told.map(({ attribute, driver }, position) => {
      const chance = chances[position] ?? 1;
      const { slope, low, high, tasters } = driver;
      return {
        attribute,
        slope,
        low,
        high,
        chance,
        tasters: [...tasters],
        sentence: driverSentence(attribute, driver, chance),
      };
    }),
    untold,
    together: movingTogether(means).map(togetherSentence),
    needs: told.length + untold.length === 0 ? phrase`Only liking was scored: nothing stands beside it.` : null,
  };
}

export const likingFindingHandlers: Handlers<'findings:penalties' | 'findings:drivers'> = {
  'findings:penalties'(kitchen, { trial }) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const aside = new Set(setAsidesOf(kitchen.read, trial).map(({ name }) => name));
    const rows = revealedRightness(kitchen.read, trial).filter(({ taster }) => !aside.has(taster));
    const attributes = Map.groupBy(rows, ({ attribute }) => attribute);
    return {
      attributes: [...attributes].map(([attribute, own]) => rightnessOf(attribute, own)),
      rule: penaltyRule(),
    };
  },
  'findings:drivers'(kitchen, { trial }) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    return driversOf(countedScores(kitchen.read, trial));
  },
};
