import { shownNumber } from '#core/words/figures.ts';
import type { PaperName } from '#renderer/parts/paper/paper-size.ts';
import {
  type GridName,
  gridNames,
  type LabelField,
  type LengthUnit,
  labelFields,
  labelGrids,
  millimetresPer,
} from './label-grids.ts';

/** What labels are printed on: a sheet of paper, or a strip out of a label printer. */
export type LabelMedium = PaperName | 'strip';

/** The form as typed. */
export interface LabelDraft {
  readonly medium: LabelMedium;
  readonly unit: LengthUnit;
  /** `own`: a sheet whose measures are typed. */
  readonly grid: GridName | 'own';
  readonly typed: Readonly<Record<LabelField, string>>;
  /** The first label that is still on the sheet, counted from 1 along the rows. */
  readonly first: string;
}

const media: readonly LabelMedium[] = ['a4', 'letter', 'strip'];

/** A draft as the kitchen kept it, on a full sheet: which labels are gone of this one, nobody knows. Null where it is none. */
export function keptLabelDraft(body: unknown): LabelDraft | null {
  if (typeof body !== 'object' || body === null) return null;
  const { medium, unit, grid, typed } = body as Readonly<Record<string, unknown>>;
  const fields = typeof typed === 'object' && typed !== null ? (typed as Readonly<Record<string, unknown>>) : {};
  const known = media.find((one) => one === medium);
  const sheet = (['own', ...gridNames] as const).find((one) => one === grid);
  if (known === undefined || sheet === undefined || (unit !== 'mm' && unit !== 'in')) return null;
  if (!labelFields.every((field) => typeof fields[field] === 'string')) return null;
  const texts = Object.fromEntries(labelFields.map((field) => [field, String(fields[field]).slice(0, 20)]));
  return { medium: known, unit, grid: sheet, typed: texts as LabelDraft['typed'], first: '1' };
}

const counts: readonly LabelField[] = ['columns', 'rows'];

function gridText(paper: PaperName, grid: GridName): LabelDraft['typed'] {
  const measures = labelGrids[paper].grids[grid];
  return Object.fromEntries(labelFields.map((field) => [field, shownNumber(measures[field])])) as LabelDraft['typed'];
}

/** A sheet of one of the usual grids, full. */
export function gridDraft(paper: PaperName, grid: GridName): LabelDraft {
  return { medium: paper, unit: labelGrids[paper].unit, grid, typed: gridText(paper, grid), first: '1' };
}

/** A typed length in another unit; what is no number stays as it is typed. @example inUnit('1', 'in', 'mm') // '25.4' */
function inUnit(text: string, from: LengthUnit, to: LengthUnit): string {
  const value = Number(text.replace(',', '.'));
  if (from === to || text.trim() === '' || !Number.isFinite(value)) return text;
  return shownNumber(Number(((value * millimetresPer[from]) / millimetresPer[to]).toFixed(to === 'mm' ? 1 : 3)));
}

/** The same lengths, said in another unit. */
export function withUnit(draft: LabelDraft, unit: LengthUnit): LabelDraft {
  const typed = Object.fromEntries(
    labelFields.map((field) => [
      field,
      counts.includes(field) ? draft.typed[field] : inUnit(draft.typed[field], draft.unit, unit),
    ]),
  ) as LabelDraft['typed'];
  return { ...draft, unit, typed };
}

/** The draft on another paper, or for a strip whose label is about as large as the strips that label printers take. */
export function withMedium(draft: LabelDraft, medium: LabelMedium, usual: GridName): LabelDraft {
  if (medium === draft.medium) return draft;
  if (medium !== 'strip') return gridDraft(medium, draft.grid === 'own' ? usual : draft.grid);
  const strip = { ...draft.typed, width: '62', height: '36' };
  return withUnit({ ...draft, medium, unit: 'mm', typed: strip, first: '1' }, draft.unit);
}
