import type { ReactNode } from 'react';
import { Paper, PaperSheet } from '#renderer/parts/paper/paper.tsx';
import type { LabelLayout } from './read-label-draft.ts';
import { words } from './words.ts';
import './label-sheets.css';

export interface Label {
  readonly key: string;
  readonly content: ReactNode;
}

/** How many sheets these labels take. */
export function sheetsNeeded({ columns, rows, first }: LabelLayout, labels: number): number {
  return Math.ceil((first + labels) / (columns * rows));
}

/** Labels on as many sheets as they take, the first sheet from its first free place on. */
export function LabelSheets({ layout, labels }: { readonly layout: LabelLayout; readonly labels: readonly Label[] }) {
  const { columns, rows, width_mm, height_mm, left_mm, top_mm, across_mm, down_mm, first } = layout;
  const each = columns * rows;
  const sheets = sheetsNeeded(layout, labels.length);
  return (
    <Paper size={layout.paper} label={words.preview}>
      {Array.from({ length: sheets }, (_, sheet) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a sheet is nothing but its place
        <PaperSheet key={sheet} label={words.sheet(sheet + 1, sheets)}>
          {labels
            .slice(Math.max(0, sheet * each - first), (sheet + 1) * each - first)
            .map(({ key, content }, place) => {
              const cell = (sheet === 0 ? first : 0) + place;
              return (
                <div
                  key={key}
                  className="label-cell"
                  style={{
                    left: `${left_mm + (cell % columns) * (width_mm + across_mm)}mm`,
                    top: `${top_mm + Math.floor(cell / columns) * (height_mm + down_mm)}mm`,
                    width: `${width_mm}mm`,
                    height: `${height_mm}mm`,
                  }}
                >
                  {content}
                </div>
              );
            })}
        </PaperSheet>
      ))}
    </Paper>
  );
}
