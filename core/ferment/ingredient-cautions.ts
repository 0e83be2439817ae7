import { phrase } from '#core/words/phrase.ts';
import { type Caution, caution, commonPractice } from './caution.ts';
import type { JarInput } from './jar-input.ts';
import type { ResolvedAddition } from './resolve-addition.ts';
import { mouldCaution } from './standing-cautions.ts';

/** The caution of mould, where something lies or floats in the jar, or nothing covers it. */
export function mouldCautions({ vessel }: JarInput, additions: readonly ResolvedAddition[]): Caution[] {
  const hasPieces = additions.some(
    (one) => one.mass_g > 0 && one.state !== 'liquid' && one.category !== 'sweetener' && one.category !== 'tea',
  );
  return hasPieces || vessel.kind === 'open-jar' ? [mouldCaution()] : [];
}

/** What an ingredient brings with it: preservatives, honey, allergens. */
export function ingredientCautions(additions: readonly ResolvedAddition[]): Caution[] {
  const present = additions.filter((one) => one.mass_g > 0);
  const found: Caution[] = [];
  const juices = present.filter((one) => one.state === 'liquid' && (one.category === 'juice' || one.category === null));
  if (juices.length > 0) {
    const label = phrase`Read the label of ${named(juices)}: sorbate or benzoate stops a ferment.`;
    found.push(caution('preserved-juice', label, commonPractice()));
  }
  if (present.some((one) => /\bhoney\b/i.test(one.name))) {
    found.push(
      caution(
        'honey-infants',
        phrase`Holds honey: not for infants under one year (infant botulism).`,
        phrase`Usual advice of health authorities (US CDC), from memory`,
      ),
    );
  }
  const allergens = new Set(present.flatMap((one) => one.allergens));
  if (allergens.size > 0) {
    found.push(
      caution(
        'allergens',
        phrase`Brings ${[...allergens].join(', ')}: name it on the label.`,
        phrase`Regulation (EU) No 1169/2011, Annex II`,
      ),
    );
  }
  return found;
}

function named(additions: readonly ResolvedAddition[]): string {
  return [...new Set(additions.map((one) => one.name))].join(', ');
}
