import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { scaleWord } from '#renderer/format/scale-words.ts';
import { justAboutRightWords } from '#shared/just-about-right-words.ts';
import { isWholePlace } from './cell-text.ts';
import { type GridPlace, gridMove } from './grid-moves.ts';
import { type Attribute, type GridCell, ScoreCell, scaleEnds } from './score-cell.tsx';
import './score-grid.css';

export interface GridRow {
  readonly key: string;
  /** How the sample is called aloud: its code, or its place. */
  readonly name: string;
  readonly head: ReactNode;
  /** What stands under the scores: a remark, for instance. An input in it carries `data-remark`. */
  readonly foot?: ReactNode;
  readonly isMissed?: boolean;
  /** What stands in place of the cells where nothing can be typed any more; the cursor passes it by. */
  readonly instead?: ReactNode;
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

/** The least width of a column, in rem, and its share of what is left. */
const columnOf = {
  scale: { least: 6.25, share: 1 },
  'just-about-right': { least: 10, share: 1.5 },
  place: { least: 20, share: 1 },
} as const;

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
  const cameByDigit = useRef(false);
  const widthNeeded = attributes.reduce((sum, { kind }) => sum + columnOf[kind].least, 7);
  const isTallAlways = attributes.length > mostColumns;
  const [isTall, setIsTall] = useState(isTallAlways);
  /** The rows that can be typed in: the cursor counts only these. */
  const typed = rows.flatMap(({ instead }, position) => (instead === undefined ? [position] : []));

  useEffect(() => {
    const shown = grid.current;
    if (shown === null || isTallAlways || typeof ResizeObserver === 'undefined') return;
    const remInPixels = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const needed = widthNeeded * remInPixels;
    const observer = new ResizeObserver(([entry]) => setIsTall((entry?.contentRect.width ?? needed) < needed));
    observer.observe(shown);
    return () => observer.disconnect();
  }, [widthNeeded, isTallAlways]);

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
    const isConfirming = cameByDigit.current && event.key === 'Enter';
    cameByDigit.current = false;
    if (isConfirming) {
      // Whoever presses Enter after the digit that went on by itself means that digit, not the next cup.
      event.preventDefault();
      return;
    }
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
      onType(typed[place.sample] ?? 0, attribute, '');
      return;
    }
    const hasRemarks = rows.some(({ foot }) => foot !== undefined);
    const size = { samples: typed.length, attributes: attributes.length, isTall, hasRemarks };
    const move = gridMove(place, event.key, size);
    if (move === null) return;
    event.preventDefault();
    if (move === 'end') onEnd();
    else if (move !== 'stay') go(move);
  }

  /** A place that needs no further digit goes on to the next cup by itself. */
  function type(position: number, attribute: Attribute, text: string): void {
    onType(position, attribute, text);
    if (!isWholePlace(text, attribute)) return;
    const at = typed.indexOf(position);
    if (at + 1 < typed.length) {
      go({ sample: at + 1, attribute: 0 });
      cameByDigit.current = true;
    } else onEnd();
  }

  const latest = useRef({ type, onType, onLeave });
  latest.current = { type, onType, onLeave };

  return (
    <>
      <table
        ref={grid}
        className={isTall ? 'score-grid is-tall' : 'score-grid'}
        style={{ '--columns': attributes.map(({ kind }) => `minmax(0, ${columnOf[kind].share}fr)`).join(' ') }}
        aria-label={label}
        onKeyDown={press}
      >
        <thead>
          <tr className="score-row is-head">
            <th scope="col" className="score-corner">
              <span className="unseen">{phrase`Sample`}</span>
            </th>
            {attributes.map((attribute) => (
              <th key={attribute.id} scope="col" className="score-attribute">
                <strong>{attribute.name}</strong>
                <span className="small soft">{scaleEnds(attribute).low}</span>
                {attribute.kind === 'just-about-right' ? (
                  <span className="small soft">{`3 ${scaleWord(justAboutRightWords[2])}`}</span>
                ) : null}
                <span className="small soft">{scaleEnds(attribute).high}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, position) => (
            <tr
              key={row.key}
              className={
                row.instead !== undefined ? 'score-row is-gone' : row.isMissed ? 'score-row is-missed' : 'score-row'
              }
            >
              <th scope="row" className="score-sample">
                {row.head}
              </th>
              {row.instead === undefined ? null : (
                <td className="score-instead" colSpan={attributes.length}>
                  {row.instead}
                </td>
              )}
              {(row.instead === undefined ? attributes : []).map((attribute, column) => (
                <ScoreCell
                  key={attribute.id}
                  shown={cell(position, attribute)}
                  attribute={attribute}
                  about={`${id}-${position}-${column}`}
                  form={`${id}-${position}`}
                  sample={typed.indexOf(position)}
                  column={column}
                  name={row.name}
                  isReadOnly={isReadOnly}
                  onType={(text) => latest.current.type(position, attribute, text)}
                  onPick={(text) => latest.current.onType(position, attribute, text)}
                  onLeave={() => latest.current.onLeave?.(position, attribute)}
                />
              ))}
              {row.foot === undefined ? null : (
                <td className="score-foot" data-sample={typed.indexOf(position)} data-attribute={attributes.length}>
                  {row.foot}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      {/* Chromium looks through every field that belongs to no form each time one is typed in; so it looks through one row. */}
      {rows.map(({ key }, position) => (
        <form key={key} id={`${id}-${position}`} hidden onSubmit={(event) => event.preventDefault()} />
      ))}
    </>
  );
}
