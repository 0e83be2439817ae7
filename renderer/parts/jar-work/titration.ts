import { acidity, titrationEndPoints } from '#core/ferment/acidity.ts';
import type { TitrationAcid } from '#core/units/parse-reading.ts';
import { words } from './words.ts';

export type EndPoint = keyof typeof titrationEndPoints;

export interface Titration {
  readonly sample_mL: number;
  readonly titrant_mL: number;
  readonly normality: number;
  readonly acid: TitrationAcid;
  readonly endPoint: EndPoint;
}

/** The most that a reading may say; a drink never comes near it. */
const most_g_per_L = 200;

export type TitrationResult =
  | { readonly ok: true; readonly g_per_L: number; readonly said: string; readonly note: string }
  | { readonly ok: false; readonly message: string };

/** What a titration comes to, how it is shown, and the note that goes with the reading. */
export function titrationResult({ endPoint, ...titration }: Titration): TitrationResult {
  const { g_per_L, meq_per_L } = acidity(titration);
  const shown = Number(g_per_L.toFixed(2));
  if (g_per_L > most_g_per_L) return { ok: false, message: words.titration.tooMuch(shown) };
  const { titrant_mL, normality, sample_mL, acid } = titration;
  return {
    ok: true,
    g_per_L: Number(g_per_L.toFixed(4)),
    said: words.titration.result(shown, acid, Number(meq_per_L.toFixed(1)), titrationEndPoints[endPoint]),
    note: words.titration.note(titrant_mL, normality, sample_mL, titrationEndPoints[endPoint]),
  };
}
