import type { Kitchen } from '#store/kitchen.ts';
import { attributesOf, samplesOf, servingsOf, type TastingWhole } from '#store/tastings.ts';
import { nameKey } from './name-key.ts';

export type Attribute = TastingWhole['attributes'][number];
export type Sample = TastingWhole['sampleList'][number];

/** Why a name in a sheet or table can't be taken. */
export interface NameProblem {
  readonly code: 'unknown-taster' | 'unknown-sample' | 'ambiguous-sample' | 'unknown-attribute';
  readonly message: string;
}

/** Finds tasters, samples and attributes of one tasting by the names that people write. */
export interface TastingNames {
  taster(written: string): { readonly id: string; readonly name: string } | NameProblem;
  /** By blind code, by the jar's label, or by its level where one jar stands for it. */
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
  const samples = new Map<string, Sample[]>();
  for (const sample of samplesOf(kitchen.read, tasting, false)) {
    // A code wins over a jar's label, a label over a level.
    const names = [sample.id, sample.code, sample.jar?.label ?? '', sample.jar?.level ?? ''];
    names.forEach((name, rank) => {
      const place = `${rank < 2 ? 0 : rank - 1}:${nameKey(name)}`;
      samples.set(place, [...(samples.get(place) ?? []), sample]);
    });
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
      return { code, message: `“${written}” is not one of this tasting’s tasters.` };
    },
    sample(written) {
      const name = nameKey(written);
      const found = samples.get(`0:${name}`) ?? samples.get(`1:${name}`) ?? samples.get(`2:${name}`);
      if (found === undefined) {
        return { code: 'unknown-sample', message: `“${written}” is neither a code nor a jar of this tasting.` };
      }
      const [only, ...others] = found;
      if (only === undefined || others.length > 0) {
        const message = `“${written}” stands for ${found.length} jars here; write the blind code or the jar’s label.`;
        return { code: 'ambiguous-sample', message };
      }
      return only;
    },
    attribute(written) {
      const found = attributesByName.get(nameKey(written));
      if (found !== undefined) return found;
      const code = 'unknown-attribute';
      return {
        code,
        message: `“${written}” is not scored in this tasting (it has ${attributes.map(({ name }) => name).join(', ')}).`,
      };
    },
  };
}

export function isNameProblem(found: object): found is NameProblem {
  return 'code' in found && 'message' in found;
}
