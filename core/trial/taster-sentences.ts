import type { TasterForm } from '#core/panel/panel-analysis.ts';
import { fixed } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

const low = 0.3;

function list(attributes: readonly string[]): string {
  return attributes.length < 2
    ? (attributes[0] ?? '')
    : phrase`${attributes.slice(0, -1).join(', ')} and ${attributes.at(-1) ?? ''}`;
}

/**
 * How a taster is doing, said gently: where the scale may be turned round, where they go with the others, how they repeat.
 *
 * @param forms the taster's entries, one an attribute
 * @returns sentences without blame; at least one
 */
export function tasterSentences(taster: string, forms: readonly TasterForm[]): string[] {
  const turned = forms.filter(({ reasons }) => reasons.some(({ code }) => code === 'scale-turned-round'));
  const known = forms.filter(({ agreement }) => agreement !== null);
  const apart = known.filter((form) => !turned.includes(form) && (form.agreement ?? 0) < low);
  const repeats = forms.filter(({ repeatability }) => repeatability !== null);
  const tells = forms.filter(({ discriminationP }) => discriminationP !== null && discriminationP < 0.05);
  const sentences: string[] = [];
  if (turned.length > 0) {
    sentences.push(
      phrase`${taster}’s ${list(turned.map(({ attribute }) => attribute))} runs against the others’: perhaps the scale was read the other way round. Ask before you leave anybody out.`,
    );
  }
  if (apart.length > 0) {
    sentences.push(
      phrase`${taster} goes their own way on ${list(apart.map(({ attribute }) => attribute))}; that may be a matter of taste.`,
    );
  }
  if (tells.length > 0)
    sentences.push(phrase`${taster} tells the samples apart by ${list(tells.map(({ attribute }) => attribute))}.`);
  if (repeats.length > 0) {
    const worst = Math.max(...repeats.map(({ repeatability }) => repeatability ?? 0));
    sentences.push(phrase`Tasting the same sample again, ${taster} stays within about ${fixed(worst, 1)} points.`);
  }
  if (sentences.length > 0) return sentences;
  return known.length > 0
    ? [phrase`${taster} goes with the others.`]
    : [phrase`With so few samples or tasters nothing can be said of ${taster} yet.`];
}
