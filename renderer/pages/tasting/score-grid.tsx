import { type FocusEvent, type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { hedonicWord } from '#shared/hedonic-words.ts';
import { readCell, typeInto } from './cell-text.ts';
import { type GridPlace, gridMove } from './grid-moves.ts';
import './score-grid.css';

export type Attribute = ValueOf<'tastings:open'>['attributes'][number];

export interface GridRow {
  readonly key: string;
  /** How the sample is called aloud: its code, or its place. */
  readonly name: string;
  readonly head: ReactNode;
  /** What stands under the scores: a remark, for instance. An input in it carries `data-remark`. */
  readonly foot?: ReactNode;
  readonly isMissed?: boolean;
}

export interface GridCell {
  readonly text: string;
  readonly state: 'empty' | 'typed' | 'kept';
  readonly fault?: string | undefined;
}

interface ScoreGridProps {
  readonly label: string;
  readonly rows: readonly GridRow[];
  readonly attributes: readonly Attribute[];
  readonly cell: (row: number, attribute: Attribute) => GridCell;
  readonly onType: (row: number, attribute: Attribute, text: string) => void;
  readonly onLeave?: (row: number, attribute: Attribute) => void;
  readonly onEnd: () => void;
  readonly onUndo?: () => void;
  readonly isReadOnly?: boolean;
}

/** More columns than this never fit beside each other. */
const mostColumns = 8;

function ends({ low, high, lowWord, highWord }: Attribute): { low: string; high: string } {
  return { low: `${low} ${lowWord ?? ''}`.trim(), high: `${high} ${highWord ?? ''}`.trim() };
}

function placeOf(target: EventTarget): GridPlace | null {
  const held = target instanceof Element ? target.closest<HTMLElement>('[data-sample]') : null;
  if (held === null) return null;
  return { sample: Number(held.dataset.sample), attribute: Number(held.dataset.attribute) };
}

/** A remark keeps its own arrow keys while the caret has somewhere to go. */
function staysInText(target: EventTarget, key: string): boolean {
  if (!(target instanceof HTMLInputElement) || target.dataset.remark === undefined) return false;
  if (key === 'ArrowLeft') return target.selectionStart !== 0 || target.selectionEnd !== 0;
  if (key === 'ArrowRight') return target.selectionEnd !== target.value.length;
  return key === 'Home' || key === 'End';
}

/** The entry sheet as a table of cells to type in: a row for each serving, a cell for each attribute, driven by digits, Enter and arrows. */
export function ScoreGrid(props: ScoreGridProps) {
  const { label, rows, attributes, cell, onType, onLeave, onEnd, onUndo, isReadOnly = false } = props;
  const grid = useRef<HTMLTableElement>(null);
  const id = useId();
  const isTallAlways = attributes.length > mostColumns;
  const [isTall, setIsTall] = useState(isTallAlways);

  useEffect(() => {
    const shown = grid.current;
    if (shown === null || isTallAlways || typeof ResizeObserver === 'undefined') return;
    const remInPixels = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const needed = (7 + attributes.length * 6.25) * remInPixels;
    const observer = new ResizeObserver(([entry]) => setIsTall((entry?.contentRect.width ?? needed) < needed));
    observer.observe(shown);
    return () => observer.disconnect();
  }, [attributes.length, isTallAlways]);

  function go(to: GridPlace): void {
    const held = grid.current?.querySelector<HTMLInputElement>(
      to.attribute === attributes.length
        ? `[data-sample="${to.sample}"][data-attribute="${to.attribute}"] input`
        : `input[data-sample="${to.sample}"][data-attribute="${to.attribute}"]`,
    );
    held?.focus();
    if (to.attribute < attributes.length) held?.select();
  }

  function press(event: KeyboardEvent<HTMLTableElement>): void {
    if (event.altKey || event.nativeEvent.isComposing || !(event.target instanceof HTMLInputElement)) return;
    const place = placeOf(event.target);
    if (place === null) return;
    if (
      (event.ctrlKey || event.metaKey) &&
      event.key.toLowerCase() === 'z' &&
      event.target.dataset.remark === undefined
    ) {
      event.preventDefault();
      event.stopPropagation();
      if (!event.shiftKey) onUndo?.();
      return;
    }
    if (event.ctrlKey || event.metaKey || event.shiftKey || staysInText(event.target, event.key)) return;
    const attribute = attributes[place.attribute];
    if (event.key === 'Backspace' && attribute !== undefined && !isReadOnly) {
      event.preventDefault();
      onType(place.sample, attribute, '');
      return;
    }
    const hasRemarks = rows.some(({ foot }) => foot !== undefined);
    const size = { samples: rows.length, attributes: attributes.length, isTall, hasRemarks };
    const move = gridMove(place, event.key, size);
    if (move === null) return;
    event.preventDefault();
    if (move === 'end') onEnd();
    else if (move !== 'stay') go(move);
  }

  return (
    <table
      ref={grid}
      className={isTall ? 'score-grid is-tall' : 'score-grid'}
      style={{ '--attributes': attributes.length }}
      aria-label={label}
      onKeyDown={press}
    >
      <thead>
        <tr className="score-row is-head">
          <th scope="col" className="score-corner">
            <span className="unseen">Sample</span>
          </th>
          {attributes.map((attribute) => (
            <th key={attribute.id} scope="col" className="score-attribute">
              <strong>{attribute.name}</strong>
              <span className="small soft">{ends(attribute).low}</span>
              <span className="small soft">{ends(attribute).high}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, position) => (
          <tr key={row.key} className={row.isMissed ? 'score-row is-missed' : 'score-row'}>
            <th scope="row" className="score-sample">
              {row.head}
            </th>
            {attributes.map((attribute, column) => (
              <ScoreCell
                key={attribute.id}
                shown={cell(position, attribute)}
                attribute={attribute}
                about={`${id}-${position}-${column}`}
                sample={position}
                column={column}
                name={row.name}
                isReadOnly={isReadOnly}
                onType={(text) => onType(position, attribute, text)}
                onLeave={() => onLeave?.(position, attribute)}
              />
            ))}
            {row.foot === undefined ? null : (
              <td className="score-foot" data-sample={position} data-attribute={attributes.length}>
                {row.foot}
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface ScoreCellProps {
  readonly shown: GridCell;
  readonly attribute: Attribute;
  readonly about: string;
  readonly sample: number;
  readonly column: number;
  readonly name: string;
  readonly isReadOnly: boolean;
  readonly onType: (text: string) => void;
  readonly onLeave: () => void;
}

function ScoreCell({ shown, attribute, about, sample, column, name, isReadOnly, onType, onLeave }: ScoreCellProps) {
  const { low, high } = ends(attribute);
  const reading = readCell(shown.text, attribute);
  const word = reading.kind === 'score' ? hedonicWord(attribute, reading.score) : null;
  return (
    <td className="score-cell" data-state={shown.fault === undefined ? shown.state : 'fault'}>
      <span className="score-cell-name" aria-hidden="true">
        <strong>{attribute.name}</strong>
        <span className="small soft">
          {low} … {high}
        </span>
      </span>
      <input
        type="text"
        inputMode="decimal"
        autoComplete="off"
        enterKeyHint="next"
        data-sample={sample}
        data-attribute={column}
        aria-label={`${attribute.name} of ${name}, ${low} to ${high}`}
        aria-invalid={shown.fault === undefined ? undefined : true}
        aria-describedby={shown.fault === undefined ? undefined : about}
        readOnly={isReadOnly}
        value={shown.text}
        onFocus={(event: FocusEvent<HTMLInputElement>) => event.target.select()}
        onChange={({ target, nativeEvent }) => {
          const kind = 'inputType' in nativeEvent ? String(nativeEvent.inputType) : '';
          onType(typeInto(shown.text, target.value, attribute, kind.startsWith('delete')));
        }}
        onBlur={onLeave}
      />
      {word === null ? null : <span className="score-word small">{word}</span>}
      {shown.fault === undefined ? null : (
        <span id={about} className="score-fault small" role="alert">
          {shown.fault}
        </span>
      )}
    </td>
  );
}
