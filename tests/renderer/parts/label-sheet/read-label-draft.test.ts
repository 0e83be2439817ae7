import { describe, expect, it } from 'vitest';
import {
  gridDraft,
  keptLabelDraft,
  type LabelDraft,
  withMedium,
  withUnit,
} from '#renderer/parts/label-sheet/label-draft.ts';
import { gridNames } from '#renderer/parts/label-sheet/label-grids.ts';
import { sheetsNeeded } from '#renderer/parts/label-sheet/label-sheets.tsx';
import { readLabelDraft } from '#renderer/parts/label-sheet/read-label-draft.ts';

const least = { width_mm: 14, height_mm: 8 };

function own(typed: Partial<LabelDraft['typed']>, first = '1'): LabelDraft {
  const draft = gridDraft('a4', '3×8');
  return { ...draft, grid: 'own', typed: { ...draft.typed, ...typed }, first };
}

describe('readLabelDraft(draft, least)', () => {
  it.each(['a4', 'letter'] as const)(
    'takes every usual grid of %s: the labels lie inside the paper, evenly on both sides',
    (paper) => {
      for (const grid of gridNames) {
        const { layout, faults } = readLabelDraft(gridDraft(paper, grid), least);
        expect(faults).toEqual({});
        if (layout === null) throw new Error(`${grid} has no layout`);
        const right = layout.paper.width_mm - layout.left_mm - layout.columns * layout.width_mm;
        const bottom = layout.paper.height_mm - layout.top_mm - layout.rows * layout.height_mm;
        expect(right).toBeCloseTo(layout.left_mm, 1);
        expect(bottom).toBeCloseTo(layout.top_mm, 1);
        // Home printers leave about a quarter of an inch at the edge unprinted (common practice, no source).
        expect(Math.min(right, bottom)).toBeGreaterThanOrEqual(6);
      }
    },
  );

  it('knows the papers: A4 is 210 by 297 mm (ISO 216), US letter 8.5 by 11 in', () => {
    expect(readLabelDraft(gridDraft('a4', '3×8'), least).layout?.paper).toEqual({ width_mm: 210, height_mm: 297 });
    const letter = readLabelDraft(gridDraft('letter', '3×8'), least).layout?.paper;
    expect((letter?.width_mm ?? 0) / 25.4).toBeCloseTo(8.5, 9);
    expect((letter?.height_mm ?? 0) / 25.4).toBeCloseTo(11, 9);
  });

  it.each(['0', '', '2.5', 'two', '-1', '21'])('says at the field that “%s” is no number of columns', (columns) => {
    expect(readLabelDraft(own({ columns }), least)).toEqual({
      layout: null,
      faults: { columns: 'Write a whole number from 1 to 20.' },
    });
  });

  it('says at the width that labels are wider than the paper, with what they need', () => {
    expect(readLabelDraft(own({ width: '80' }), least).faults).toEqual({
      width: '3 labels beside each other, each 80 mm wide, need 249 mm with margin and gaps; the paper is 210 mm wide.',
    });
    expect(readLabelDraft(own({ columns: '1', width: '250' }), least).faults.width).toBe(
      'A label 250 mm wide needs 259 mm with its margin; the paper is 210 mm wide.',
    );
  });

  it('counts gaps between labels, not after the last', () => {
    expect(readLabelDraft(own({ left: '5', across: '4' }), least).layout).not.toBeNull();
    expect(readLabelDraft(own({ left: '5', across: '7' }), least).faults.width).toContain('need 211 mm');
    expect(readLabelDraft(own({ down: '3' }), least).faults.height).toContain('8 labels below each other');
  });

  it('refuses labels too small to read, lengths that are none, and a first label that the sheet has not', () => {
    expect(readLabelDraft(own({ width: '9' }), least).faults.width).toContain('at least 14 mm wide and 8 mm high');
    expect(readLabelDraft(own({ left: '-1' }), least).faults.left).toBe('Write a length from 0 to 300 mm.');
    expect(readLabelDraft(own({}, '25'), least).faults).toEqual({ first: 'This sheet has labels 1 to 24.' });
    expect(readLabelDraft(own({}, '0'), least).faults.first).toBeDefined();
  });

  it('reads a comma, and inches as inches', () => {
    expect(readLabelDraft(own({ left: '8,5' }), least).layout?.left_mm).toBe(8.5);
    const inches = withUnit(own({}), 'in');
    expect(inches.typed).toMatchObject({ columns: '3', rows: '8', width: '2.52', left: '0.354' });
    expect(readLabelDraft(inches, least).layout?.width_mm).toBeCloseTo(64, 1);
  });

  it('makes of a strip one label a sheet, as large as it is', () => {
    const strip = withMedium(gridDraft('letter', '3×8'), 'strip', '3×8');
    expect(strip.unit).toBe('in');
    const { layout } = readLabelDraft(strip, least);
    expect(layout).toMatchObject({ columns: 1, rows: 1, left_mm: 0, first: 0 });
    expect(layout?.paper.width_mm).toBeCloseTo(62, 1);
    expect(layout?.paper).toEqual({ width_mm: layout?.width_mm, height_mm: layout?.height_mm });
  });
});

describe('sheetsNeeded(layout, labels)', () => {
  it('counts the places that are used up already', () => {
    const at = (first: string) => readLabelDraft(own({}, first), least).layout;
    const [fresh, used] = [at('1'), at('20')];
    if (fresh === null || used === null) throw new Error('no layout');
    expect([sheetsNeeded(fresh, 24), sheetsNeeded(fresh, 25), sheetsNeeded(used, 5), sheetsNeeded(used, 6)]).toEqual([
      1, 2, 1, 2,
    ]);
  });
});

describe('keptLabelDraft(body)', () => {
  it('brings a draft back as it was, on a full sheet, and refuses what is none', () => {
    const draft = { ...gridDraft('letter', '2×7'), first: '9' };
    expect(keptLabelDraft(JSON.parse(JSON.stringify(draft)))).toEqual({ ...draft, first: '1' });
    for (const body of [
      null,
      'a4',
      {},
      { ...draft, medium: 'wall' },
      { ...draft, grid: '9×9' },
      { ...draft, typed: {} },
    ]) {
      expect(keptLabelDraft(body)).toBeNull();
    }
  });
});
