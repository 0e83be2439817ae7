import { type FocusEvent, memo } from 'react';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { scaleWord } from '#renderer/format/scale-words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { justAboutRightWords } from '#shared/just-about-right-words.ts';
import { cellSteps, cellWord, readCell, typeInto } from './cell-text.ts';

export type Attribute = ValueOf<'tastings:open'>['attributes'][number];

export interface GridCell {
  readonly text: string;
  readonly state: 'empty' | 'typed' | 'kept';
  readonly fault?: string | undefined;
  /** What is still wanted here. */
  readonly note?: string | undefined;
}

/** The two ends of a scale as they stand over its column. */
export function scaleEnds({ kind, low, high, lowWord, highWord }: Attribute): { low: string; high: string } {
  if (kind === 'just-about-right')
    return { low: `1 ${scaleWord(justAboutRightWords[0])}`, high: `5 ${scaleWord(justAboutRightWords[4])}` };
  return {
    low: `${shownNumber(low)} ${scaleWord(lowWord ?? '')}`.trim(),
    high: `${shownNumber(high)} ${scaleWord(highWord ?? '')}`.trim(),
  };
}

/** Its three acts must go by the latest state of the grid: a cell that shows the same keeps the ones it was drawn with. */
interface ScoreCellProps {
  readonly shown: GridCell;
  readonly attribute: Attribute;
  readonly about: string;
  /** The form of its row. */
  readonly form: string;
  readonly sample: number;
  readonly column: number;
  readonly name: string;
  readonly isReadOnly: boolean;
  readonly onType: (text: string) => void;
  /** Chosen by mouse or finger: it never moves the cursor. */
  readonly onPick: (text: string) => void;
  readonly onLeave: () => void;
}

/** Whether two cells show the same: what they do when typed in is asked of the grid, which is always the latest. */
function showsTheSame(one: ScoreCellProps, other: ScoreCellProps): boolean {
  return (
    one.shown.text === other.shown.text &&
    one.shown.state === other.shown.state &&
    one.shown.fault === other.shown.fault &&
    one.shown.note === other.shown.note &&
    one.attribute === other.attribute &&
    one.about === other.about &&
    one.sample === other.sample &&
    one.column === other.column &&
    one.name === other.name &&
    one.isReadOnly === other.isReadOnly
  );
}

/** One cell to type in, with its steps to press where it has some. Drawn again only when it shows something else. */
export const ScoreCell = memo(function ScoreCell(props: ScoreCellProps) {
  const { shown, attribute, about, form, sample, column, name, isReadOnly, onType, onPick, onLeave } = props;
  const { low, high } = scaleEnds(attribute);
  const reading = readCell(shown.text, attribute);
  const word = reading.kind === 'score' ? cellWord(attribute, reading.score) : null;
  const steps = isReadOnly ? [] : cellSteps(attribute);
  const said = shown.fault ?? shown.note;
  return (
    <td
      className="score-cell"
      data-kind={attribute.kind}
      data-state={shown.fault === undefined ? shown.state : 'fault'}
    >
      <span className="score-cell-name" aria-hidden="true">
        <strong>{attribute.name}</strong>
        <span className="small soft">
          <span className="whole">{low} …</span> <span className="whole">{high}</span>
        </span>
      </span>
      <input
        type="text"
        form={form}
        inputMode="decimal"
        autoComplete="off"
        enterKeyHint="next"
        data-sample={sample}
        data-attribute={column}
        aria-label={phrase`${attribute.name} of ${name}, ${low} to ${high}`}
        aria-invalid={shown.fault === undefined ? undefined : true}
        aria-describedby={said === undefined ? undefined : about}
        readOnly={isReadOnly}
        value={shown.text}
        onFocus={(event: FocusEvent<HTMLInputElement>) => event.target.select()}
        onChange={({ target, nativeEvent }) => {
          const kind = 'inputType' in nativeEvent ? String(nativeEvent.inputType) : '';
          onType(typeInto(shown.text, target.value, attribute, kind.startsWith('delete')));
        }}
        onBlur={onLeave}
      />
      {steps.length === 0 ? null : (
        <span className="score-steps">
          {steps.map(({ text, word: meaning }) => (
            <button
              key={text}
              type="button"
              className="score-step"
              // Not reached by Tab, as the ARIA Authoring Practices say of a spinbutton's own buttons (pattern Spinbutton): the
              // keyboard's way is the cell itself, which takes the same digits.
              tabIndex={-1}
              aria-pressed={shown.text === text}
              // It begins with what is seen on it.
              aria-label={
                attribute.kind === 'place'
                  ? `${name}: ${meaning}`
                  : phrase`${text} ${meaning}: ${attribute.name} of ${name}`
              }
              title={meaning}
              onClick={() => onPick(shown.text === text ? '' : text)}
            >
              <span>{text}</span>{' '}
              {attribute.kind === 'place' ? null : <span className="score-step-word">{meaning}</span>}
            </button>
          ))}
        </span>
      )}
      {word === null ? null : <span className="score-word small">{word}</span>}
      {shown.fault === undefined ? null : (
        <span id={about} className="score-fault small" role="alert">
          {shown.fault}
        </span>
      )}
      {shown.fault !== undefined || shown.note === undefined ? null : (
        <span id={about} className="score-note small">
          {shown.note}
        </span>
      )}
    </td>
  );
}, showsTheSame);
