import { differenceOfVersions } from '#core/recipe/difference-of-versions.ts';
import { formulaOfJar } from '#core/recipe/formula-of-jar.ts';
import { coverWords } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Draft = ValueOf<'recipes:preview'>;
export type ComparedVersion = Pick<Draft, 'formula' | 'base_mL' | 'vessel'>;

function perLitre({ formula, base_mL }: ComparedVersion) {
  const whole = formulaOfJar(formula, base_mL, 'base');
  return whole.cover === undefined || formula.cover === null ? whole : { ...whole, cover: coverWords[formula.cover] };
}

/** What changed from one version to the next, one sentence a change. */
export function versionDifferences(before: ComparedVersion, after: ComparedVersion): string[] {
  return differenceOfVersions(perLitre(before), perLitre(after)).map(({ sentence }) => sentence);
}
