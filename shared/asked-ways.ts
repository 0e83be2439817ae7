import { decimalMarks } from '#core/words/figures.ts';
import type { AskedWays } from './carriage.ts';

const tag = /^[a-z]{2,3}(?:-[a-z0-9]{2,8}){0,3}$/i;

/** Whether a text may name a language: a short BCP 47 tag, which is also a harmless file's name. */
export function isLanguageTag(value: unknown): value is string {
  return typeof value === 'string' && tag.test(value);
}

/** Takes the ways out of what came over a channel; null where they are none. @example readWays({ language: 'de', decimal: ',' }) */
export function readWays(value: unknown): AskedWays | null {
  if (typeof value !== 'object' || value === null) return null;
  const { language, decimal } = value as Partial<Record<keyof AskedWays, unknown>>;
  const mark = decimalMarks.find((one) => one === decimal);
  return isLanguageTag(language) && mark !== undefined ? { language, decimal: mark } : null;
}
