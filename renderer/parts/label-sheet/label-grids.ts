import type { PaperName } from '#renderer/parts/paper/paper-size.ts';

// Sheets of labels. The sizes are our own even divisions of the paper; whoever has other sheets types their measures.

export type LengthUnit = 'mm' | 'in';

export const millimetresPer: Readonly<Record<LengthUnit, number>> = { mm: 1, in: 25.4 };

export const labelFields = ['columns', 'rows', 'width', 'height', 'left', 'top', 'across', 'down'] as const;
export type LabelField = (typeof labelFields)[number];

/** Columns, rows, a label's width and height, the sheet's left and top margin, the gaps; lengths in the paper's own unit. */
export type GridMeasures = Readonly<Record<LabelField, number>>;

export const gridNames = ['2×4', '2×7', '3×8', '5×13'] as const;
export type GridName = (typeof gridNames)[number];

const noGaps = { across: 0, down: 0 };

export const labelGrids: Readonly<
  Record<PaperName, { readonly unit: LengthUnit; readonly grids: Readonly<Record<GridName, GridMeasures>> }>
> = {
  a4: {
    unit: 'mm',
    grids: {
      '2×4': { columns: 2, rows: 4, width: 96, height: 66, left: 9, top: 16.5, ...noGaps },
      '2×7': { columns: 2, rows: 7, width: 96, height: 38, left: 9, top: 15.5, ...noGaps },
      '3×8': { columns: 3, rows: 8, width: 64, height: 33.5, left: 9, top: 14.5, ...noGaps },
      '5×13': { columns: 5, rows: 13, width: 38, height: 21, left: 10, top: 12, ...noGaps },
    },
  },
  letter: {
    unit: 'in',
    grids: {
      '2×4': { columns: 2, rows: 4, width: 4, height: 2.4, left: 0.25, top: 0.7, ...noGaps },
      '2×7': { columns: 2, rows: 7, width: 4, height: 1.4, left: 0.25, top: 0.6, ...noGaps },
      '3×8': { columns: 3, rows: 8, width: 2.6, height: 1.25, left: 0.35, top: 0.5, ...noGaps },
      '5×13': { columns: 5, rows: 13, width: 1.5, height: 0.8, left: 0.5, top: 0.3, ...noGaps },
    },
  },
};
