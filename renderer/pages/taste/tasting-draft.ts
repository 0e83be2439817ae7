import { shownNumber } from '#core/words/figures.ts';
import '#renderer/app/quiet-zod.ts';
import { z } from 'zod';
import { parseQuantity } from '#core/units/parse-quantity.ts';
import type { Unit } from '#core/units/unit-table.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import type { AskedOf } from '#shared/contract/all-requests.ts';
import { defaultAttributes } from '#shared/default-attributes.ts';
import { justAboutRightWords } from '#shared/just-about-right-words.ts';
import { draftWords } from './draft-words.ts';

const text = z.string().max(4000);
const list = z.array(text).max(500);

export const ways = ['scored', 'ranked'] as const;
export type Way = (typeof ways)[number];

const attributeDraft = z.strictObject({
  key: text,
  isIn: z.boolean(),
  /** The maker's own, to be named and given its ends. */
  isOwn: z.boolean(),
  kind: z.enum(['scale', 'just-about-right']),
  name: text,
  low: text,
  high: text,
  lowWord: text,
  highWord: text,
});

/** A tasting as it is being built: what was typed and ticked, not yet read. */
const tastingDraft = z.strictObject({
  name: text,
  way: z.enum(ways),
  jars: list,
  amount: text,
  temperature: text,
  tasters: list,
  replicates: z.int().min(1).max(10),
  attributes: z.array(attributeDraft).max(60),
});

export type AttributeDraft = Readonly<z.infer<typeof attributeDraft>>;
export type TastingDraft = Readonly<z.infer<typeof tastingDraft>>;

/** A kept draft, or null when it is none that this version reads. */
export function keptDraft(body: unknown): TastingDraft | null {
  const read = tastingDraft.safeParse(body);
  return read.success ? read.data : null;
}

/** A draft without the jars and people that are there no longer. */
export function stillThere(draft: TastingDraft, jars: readonly string[], tasters: readonly string[]): TastingDraft {
  return {
    ...draft,
    jars: draft.jars.filter((jar) => jars.includes(jar)),
    tasters: draft.tasters.filter((taster) => tasters.includes(taster)),
  };
}

export function firstDraft(name: string, jars: readonly string[]): TastingDraft {
  return {
    name,
    way: 'scored',
    jars: [...jars],
    amount: '',
    temperature: '',
    tasters: [],
    replicates: 1,
    attributes: defaultAttributes.map((each) => ({
      key: each.name,
      isIn: true,
      isOwn: false,
      kind: 'scale',
      name: each.name,
      low: shownNumber(each.low),
      high: shownNumber(each.high),
      lowWord: each.lowWord,
      highWord: each.highWord,
    })),
  };
}

/** The maker's own attribute, under a key that none of these has. */
export function ownAttribute(taken: readonly AttributeDraft[]): AttributeDraft {
  let number = 1;
  while (taken.some((one) => one.key === `own ${number}`)) number += 1;
  const key = `own ${number}`;
  return { key, isIn: true, isOwn: true, kind: 'scale', name: '', low: '0', high: '10', lowWord: '', highWord: '' };
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
  return draft.attributes.flatMap(({ key, isIn, kind, name, low, high, lowWord, highWord }) => {
    if (!isIn) return [];
    const called = name.trim();
    const [least, most] = [typedNumber(low), typedNumber(high)];
    if (called === '') faults[`attribute ${key} name`] = draftWords.nameMissing;
    else if (seen.has(called.toLowerCase())) faults[`attribute ${key} name`] = draftWords.nameTwice(called);
    seen.add(called.toLowerCase());
    if (kind === 'just-about-right') {
      return [
        { name: called, kind, low: -2, high: 2, lowWord: justAboutRightWords[0], highWord: justAboutRightWords[4] },
      ];
    }
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
  const isRanked = draft.way === 'ranked';
  if (isRanked && draft.jars.length === 1) faults.jars = draftWords.oneJarRanked;
  if (draft.tasters.length === 0) faults.tasters = draftWords.noTaster;
  if (typeof amount === 'string') faults.amount = amount;
  else if (amount !== undefined && amount <= 0) faults.amount = draftWords.amountZero;
  if (typeof temperature === 'string') faults.temperature = temperature;
  else if (temperature !== undefined && (temperature < -5 || temperature > 40)) faults.temperature = draftWords.tooFar;
  const attributes = isRanked ? [] : attributesOf(draft, faults);
  if (!isRanked && draft.attributes.every(({ isIn }) => !isIn)) faults.attributes = draftWords.noAttribute;
  if (Object.keys(faults).length > 0) return { input: null, faults };
  const served = typeof amount === 'number' ? { served_mL: amount } : {};
  return {
    faults,
    input: {
      trial,
      name: draft.name.trim(),
      samples: draft.jars.map((jar) => ({ jar, ...served })),
      tasters: [...draft.tasters],
      ...(isRanked ? { ranked: true } : { attributes, replicates: draft.replicates }),
      seed,
      ...(typeof temperature === 'number' ? { served_C: temperature } : {}),
    },
  };
}
