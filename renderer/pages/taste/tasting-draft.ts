import { parseQuantity } from '#core/units/parse-quantity.ts';
import type { Unit } from '#core/units/unit-table.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import type { AskedOf } from '#shared/contract/all-requests.ts';
import { defaultAttributes } from '#shared/default-attributes.ts';
import { draftWords } from './draft-words.ts';

export interface AttributeDraft {
  readonly key: string;
  readonly isIn: boolean;
  /** The maker's own, to be named and given its ends. */
  readonly isOwn: boolean;
  readonly name: string;
  readonly low: string;
  readonly high: string;
  readonly lowWord: string;
  readonly highWord: string;
}

/** A tasting as it is being built: what was typed and ticked, not yet read. */
export interface TastingDraft {
  readonly name: string;
  readonly jars: readonly string[];
  readonly amount: string;
  readonly temperature: string;
  readonly tasters: readonly string[];
  readonly replicates: number;
  readonly attributes: readonly AttributeDraft[];
}

export function firstDraft(name: string, jars: readonly string[]): TastingDraft {
  return {
    name,
    jars,
    amount: '',
    temperature: '',
    tasters: [],
    replicates: 1,
    attributes: defaultAttributes.map((each) => ({
      key: each.name,
      isIn: true,
      isOwn: false,
      name: each.name,
      low: String(each.low),
      high: String(each.high),
      lowWord: each.lowWord,
      highWord: each.highWord,
    })),
  };
}

export function ownAttribute(key: string): AttributeDraft {
  return { key, isIn: true, isOwn: true, name: '', low: '0', high: '10', lowWord: '', highWord: '' };
}

export type DraftFaults = Readonly<Record<string, string>>;

interface Units {
  readonly volume: Unit;
  readonly temperature: Unit;
}

/** An amount with or without its unit; undefined when nothing is typed, a sentence when it can't be read. */
export function readAmount(text: string, dimension: 'volume' | 'temperature', unit: Unit): number | string | undefined {
  if (text.trim() === '') return undefined;
  const parsed = parseQuantity(text, dimension, unit);
  if (!parsed.ok) return parsed.problem.message;
  return parsed.value.rest === '' ? parsed.value.stored : draftWords.notRead(parsed.value.rest);
}

type Attributes = NonNullable<AskedOf<'tastings:build'>['attributes']>;

function attributesOf(draft: TastingDraft, faults: Record<string, string>): Attributes {
  const seen = new Set<string>();
  return draft.attributes.flatMap(({ key, isIn, name, low, high, lowWord, highWord }) => {
    if (!isIn) return [];
    const called = name.trim();
    const [least, most] = [typedNumber(low), typedNumber(high)];
    if (called === '') faults[`attribute ${key} name`] = draftWords.nameMissing;
    else if (seen.has(called.toLowerCase())) faults[`attribute ${key} name`] = draftWords.nameTwice(called);
    seen.add(called.toLowerCase());
    if (least.kind !== 'number' || most.kind !== 'number' || least.value >= most.value) {
      faults[`attribute ${key} ends`] = draftWords.endsWrong;
      return [];
    }
    return [
      {
        name: called,
        low: least.value,
        high: most.value,
        ...(lowWord.trim() === '' ? {} : { lowWord: lowWord.trim() }),
        ...(highWord.trim() === '' ? {} : { highWord: highWord.trim() }),
      },
    ];
  });
}

/**
 * What a draft asks of the desk, or why it can't yet, field by field.
 *
 * @param seed for codes and serving orders; drawn by the caller
 */
export function readDraft(
  draft: TastingDraft,
  trial: string,
  units: Units,
  seed: number,
): { input: AskedOf<'tastings:build'> | null; faults: DraftFaults } {
  const faults: Record<string, string> = {};
  const amount = readAmount(draft.amount, 'volume', units.volume);
  const temperature = readAmount(draft.temperature, 'temperature', units.temperature);
  if (draft.name.trim() === '') faults.name = draftWords.nameMissing;
  if (draft.jars.length === 0) faults.jars = draftWords.noJar;
  if (draft.tasters.length === 0) faults.tasters = draftWords.noTaster;
  if (typeof amount === 'string') faults.amount = amount;
  else if (amount !== undefined && amount <= 0) faults.amount = draftWords.amountZero;
  if (typeof temperature === 'string') faults.temperature = temperature;
  else if (temperature !== undefined && (temperature < -5 || temperature > 40)) faults.temperature = draftWords.tooFar;
  const attributes = attributesOf(draft, faults);
  if (draft.attributes.every(({ isIn }) => !isIn)) faults.attributes = draftWords.noAttribute;
  if (Object.keys(faults).length > 0) return { input: null, faults };
  const served = typeof amount === 'number' ? { served_mL: amount } : {};
  return {
    faults,
    input: {
      trial,
      name: draft.name.trim(),
      samples: draft.jars.map((jar) => ({ jar, ...served })),
      tasters: [...draft.tasters],
      attributes,
      replicates: draft.replicates,
      seed,
      ...(typeof temperature === 'number' ? { served_C: temperature } : {}),
    },
  };
}
