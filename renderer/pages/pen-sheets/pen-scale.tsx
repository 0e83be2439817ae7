import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { scaleWord } from '#renderer/format/scale-words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { isHedonic } from '#shared/hedonic-words.ts';
import { justAboutRightWords } from '#shared/just-about-right-words.ts';

export type Attribute = ValueOf<'tastings:open'>['attributes'][number];

/** Beyond so many boxes a figure is written instead of a cross. */
const mostBoxes = 12;

/** What each box of a scale says; empty where a figure has to be written. */
export function boxesOf({ kind, low, high }: Attribute): string[] {
  if (kind === 'just-about-right') return ['−−', '−', phrase`right`, '+', '++'];
  if (!Number.isInteger(low) || !Number.isInteger(high) || high - low >= mostBoxes) return [];
  return Array.from({ length: high - low + 1 }, (_, place) => String(low + place).replace('-', '−'));
}

/** The words at a scale's two ends; its figures where it has none. */
export function endWords(attribute: Attribute): readonly [string, string] {
  const { kind, low, high, lowWord, highWord } = attribute;
  if (kind === 'just-about-right') return [scaleWord(justAboutRightWords[0]), scaleWord(justAboutRightWords[4])];
  return [scaleWord(lowWord ?? shownNumber(low)), scaleWord(highWord ?? shownNumber(high))];
}

/** A scale in one line, for where there is room for a figure only. @example '0 flat … 10 very fizzy' */
export function scaleLine(attribute: Attribute): string {
  if (attribute.kind === 'just-about-right') {
    return justAboutRightWords
      .map((word, place) => `${String(place - 2).replace('-', '−')} ${scaleWord(word)}`)
      .join(', ');
  }
  const [low, high] = endWords(attribute);
  const middle = isHedonic(attribute) ? phrase`5 neither, ` : '';
  return `${shownNumber(attribute.low)} ${low}, ${middle}${shownNumber(attribute.high)} ${high}`;
}

/** One attribute of one cup: its name, its ends, its boxes. */
export function PenScale({ attribute }: { readonly attribute: Attribute }) {
  const boxes = boxesOf(attribute);
  const [low, high] = endWords(attribute);
  return (
    <div className="pen-scale">
      <b>{attribute.name}</b>
      <span className="pen-end">{low}</span>
      {boxes.length === 0 ? (
        <span className="pen-figure">{`${shownNumber(attribute.low)}–${shownNumber(attribute.high)}`}</span>
      ) : (
        <span className="pen-boxes">
          {boxes.map((box) => (
            <span key={box}>{box}</span>
          ))}
        </span>
      )}
      <span className="pen-end">{high}</span>
    </div>
  );
}
