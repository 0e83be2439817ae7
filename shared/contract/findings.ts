import { z } from 'zod';
import { surenesses } from '#core/trial/sureness.ts';
import { id } from './fields.ts';
import { panelAnalysis } from './panel.ts';
import { reads } from './request.ts';

const namedScore = z.strictObject({
  taster: z.string(),
  sample: z.string(),
  attribute: z.string(),
  replicate: z.int(),
  score: z.number(),
  jar: z.string(),
});

/** What an attribute did, in words. */
const sentence = z.strictObject({
  attribute: z.string(),
  sentence: z.string(),
  /** Each level against the control; null without one. */
  againstControl: z.string().nullable(),
  /** With the number of attributes allowed for. */
  sureness: z.enum(surenesses),
  /** Of luck alone setting the levels this far apart, adjusted for the number of attributes; null without a test. */
  chance: z.number().nullable(),
});

/** The answer to the trial's question. */
const headline = z.strictObject({
  sentence: z.string(),
  also: z.string().nullable(),
  sureness: z.string().nullable(),
  doubts: z.array(z.string()).readonly(),
  small: z.array(z.string()).readonly(),
  /** The best-liked level where the panel is sure of it. */
  winner: z.strictObject({ level: z.string(), mean: z.number(), expected: z.number() }).nullable(),
});

/** A jar that was discarded while its tasting was open: what was scored of it is kept and not counted. */
const takenOut = z.strictObject({
  tasting: id,
  name: z.string(),
  jar: z.string(),
  level: z.string(),
  why: z.string(),
  scores: z.int(),
  sentence: z.string(),
});

export const findingRequests = {
  /** The analysis of all closed tastings of a trial, its headline, and a sentence for each attribute. */
  'findings:read': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      trial: id,
      tastings: z.int(),
      scores: z.array(namedScore),
      takenOut: z.array(takenOut),
      levels: z.record(z.string(), z.number()).nullable(),
      scales: z.record(z.string(), z.tuple([z.number(), z.number()])),
      control: z.string().nullable(),
      /** The attribute that is liking; null when nobody scored it. */
      liking: z.string().nullable(),
      analysis: panelAnalysis.nullable(),
      /** How each taster is doing, in words; `setAside` is the reason where their scores are not counted. */
      tasters: z.array(
        z.strictObject({ id, name: z.string(), words: z.array(z.string()), setAside: z.string().nullable() }),
      ),
      /** The headline with everybody counted; null when nobody is set aside. */
      withEverybody: z.string().nullable(),
      headline: headline.nullable(),
      sentences: z.array(sentence),
    }),
    { long: true },
  ),
} as const;
