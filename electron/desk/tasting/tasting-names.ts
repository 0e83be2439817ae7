import { phrase } from '#core/words/phrase.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { attributesOf, samplesOf, servingsOf, type TastingWhole } from '#store/rows/tastings.ts';
import { nameKey } from '../pasted/name-key.ts';

export type Attribute = TastingWhole['attributes'][number];
export type Sample = TastingWhole['sampleList'][number];

/** Why a name in a sheet or table can't be taken. */
export interface NameProblem {
  readonly code: 'unknown-taster' | 'unknown-sample' | 'taken-out' | 'jar-while-blind' | 'unknown-attribute';
  readonly message: string;
}

/** Finds tasters, samples and attributes of one open tasting by the names that people write. */
export interface TastingNames {
  taster(written: string): { readonly id: string; readonly name: string } | NameProblem;
  /** By blind code or id alone: whoever could write a jar's label here would read its code in the stored scores. */
  sample(written: string): Sample | NameProblem;
  attribute(written: string): Attribute | NameProblem;
  readonly attributes: readonly Attribute[];
}

export function namesOfTasting(kitchen: Kitchen, tasting: string): TastingNames {
  const tasters = new Map<string, { id: string; name: string }>();
  for (const { taster: id, name } of servingsOf(kitchen.read, tasting)) {
    tasters.set(nameKey(name), { id, name });
    tasters.set(id, { id, name });
  }
  const samples = new Map<string, Sample>();
  const jarNames = new Set<string>();
  for (const sample of samplesOf(kitchen.read, tasting, false)) {
    for (const name of [sample.id, sample.code]) samples.set(nameKey(name), sample);
    for (const name of [sample.jar?.label ?? '', sample.jar?.level ?? '']) jarNames.add(nameKey(name));
  }
  const attributes = attributesOf(kitchen.read, tasting);
  const attributesByName = new Map(
    attributes.flatMap((each) => [[nameKey(each.name), each] as const, [each.id, each] as const]),
  );

  return {
    attributes,
    taster(written) {
      const found = tasters.get(nameKey(written));
      if (found !== undefined) return found;
      const code = 'unknown-taster';
      return { code, message: phrase`“${written}” is not one of this tasting’s tasters.` };
    },
    sample(written) {
      const found = samples.get(nameKey(written));
      if (found?.takenOut != null) {
        const message = phrase`Sample ${found.code} was taken out: its jar was discarded (${found.takenOut.why}). What was scored of it is kept and not counted; nothing is added.`;
        return { code: 'taken-out', message };
      }
      if (found !== undefined) return found;
      if (jarNames.has(nameKey(written))) {
        const message = phrase`“${written}” is a jar’s label or level. While the tasting is open a sample goes by its blind code alone, so that nobody learns which jar is which.`;
        return { code: 'jar-while-blind', message };
      }
      return { code: 'unknown-sample', message: phrase`“${written}” is not a code of this tasting.` };
    },
    attribute(written) {
      const found = attributesByName.get(nameKey(written));
      if (found !== undefined) return found;
      const code = 'unknown-attribute';
      return {
        code,
        message: phrase`“${written}” is not scored in this tasting (it has ${attributes.map(({ name }) => name).join(', ')}).`,
      };
    },
  };
}

export function isNameProblem(found: object): found is NameProblem {
  return 'code' in found && 'message' in found;
}
