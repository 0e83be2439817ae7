import { shownNumber } from '#core/words/figures.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import { type PaperSize, paperSizes } from '#renderer/parts/paper/paper-size.ts';
import type { LabelDraft } from './label-draft.ts';
import { type LabelField, millimetresPer } from './label-grids.ts';
import { words } from './words.ts';

/** Where labels lie on their sheet. */
export interface LabelLayout {
  readonly paper: PaperSize;
  readonly columns: number;
  readonly rows: number;
  readonly width_mm: number;
  readonly height_mm: number;
  readonly left_mm: number;
  readonly top_mm: number;
  readonly across_mm: number;
  readonly down_mm: number;
  /** Counted from 0. */
  readonly first: number;
}

export type LabelFaults = Readonly<Partial<Record<LabelField | 'first', string>>>;

export type ReadLabels =
  | { readonly layout: LabelLayout; readonly faults: LabelFaults }
  | { readonly layout: null; readonly faults: LabelFaults };

/** The smallest label on which everything can still be read. */
export interface LeastLabel {
  readonly width_mm: number;
  readonly height_mm: number;
}

const most_mm = 300;
const mostColumns = 20;
const mostRows = 40;

function whole(text: string, most: number): number | null {
  const read = typedNumber(text);
  return read.kind === 'number' && Number.isInteger(read.value) && read.value >= 1 && read.value <= most
    ? read.value
    : null;
}

/** Reads the form: the layout, or a sentence for each field that can't be. */
export function readLabelDraft(draft: LabelDraft, least: LeastLabel): ReadLabels {
  const faults: Partial<Record<LabelField | 'first', string>> = {};
  const { unit, typed } = draft;
  const isStrip = draft.medium === 'strip';
  const said = (length_mm: number) =>
    `${shownNumber(Number((length_mm / millimetresPer[unit]).toFixed(unit === 'mm' ? 1 : 2)))} ${unit}`;

  function length(field: LabelField, low_mm: number, fault: string): number {
    const read = typedNumber(typed[field]);
    const value = read.kind === 'number' ? read.value * millimetresPer[unit] : Number.NaN;
    if (value >= low_mm - 0.05 && value <= most_mm) return value;
    faults[field] = fault;
    return low_mm;
  }
  function count(field: 'columns' | 'rows', most: number): number {
    const value = isStrip ? 1 : whole(typed[field], most);
    if (value === null) faults[field] = words.notCount(most);
    return value ?? 1;
  }

  const columns = count('columns', mostColumns);
  const rows = count('rows', mostRows);
  const size = words.notSize(said(least.width_mm), said(least.height_mm), said(most_mm));
  const width_mm = length('width', least.width_mm, size);
  const height_mm = length('height', least.height_mm, size);
  const gap = (field: LabelField) => (isStrip ? 0 : length(field, 0, words.notGap(said(most_mm))));
  const [left_mm, top_mm, across_mm, down_mm] = [gap('left'), gap('top'), gap('across'), gap('down')];
  const paper = draft.medium === 'strip' ? { width_mm, height_mm } : paperSizes[draft.medium];

  const acrossNeeds = left_mm + columns * width_mm + (columns - 1) * across_mm;
  const downNeeds = top_mm + rows * height_mm + (rows - 1) * down_mm;
  // A rounded inch may stand for a little less.
  if (!isStrip && acrossNeeds > paper.width_mm + 0.3) {
    faults.width ??= words.tooWide(columns, said(width_mm), said(acrossNeeds), said(paper.width_mm));
  }
  if (!isStrip && downNeeds > paper.height_mm + 0.3) {
    faults.height ??= words.tooHigh(rows, said(height_mm), said(downNeeds), said(paper.height_mm));
  }
  const cells = columns * rows;
  const first = isStrip ? 1 : whole(draft.first, cells);
  const areCounted = faults.columns === undefined && faults.rows === undefined;
  if (first === null && areCounted) faults.first = words.notFirst(cells);
  if (Object.keys(faults).length > 0) return { layout: null, faults };
  return {
    layout: { paper, columns, rows, width_mm, height_mm, left_mm, top_mm, across_mm, down_mm, first: (first ?? 1) - 1 },
    faults,
  };
}
