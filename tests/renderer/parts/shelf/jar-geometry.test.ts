import { describe, expect, it } from 'vitest';
import { jarGeometry } from '#renderer/parts/shelf/jar-geometry.ts';

const litre = { kind: 'open-jar', capacity_mL: 1000 } as const;

describe('jarGeometry(measure, width)', () => {
  it('puts more drink higher', () => {
    const less = jarGeometry({ ...litre, volume_mL: 500, pieces_mL: 0 }, 100);
    const more = jarGeometry({ ...litre, volume_mL: 800, pieces_mL: 0 }, 100);
    expect(more.liquidTop).toBeLessThan(less.liquidTop);
    expect(more.fillFraction).toBeCloseTo(0.8, 12);
  });

  it('floats the pieces at the top of the drink, in a layer that grows with them', () => {
    const few = jarGeometry({ ...litre, volume_mL: 800, pieces_mL: 40 }, 100);
    const many = jarGeometry({ ...litre, volume_mL: 800, pieces_mL: 160 }, 100);
    expect(few.piecesBottom).toBeGreaterThan(few.liquidTop);
    expect(many.piecesBottom).toBeGreaterThan(few.piecesBottom);
    expect(many.piecesBottom).toBeLessThan(many.height);
  });

  it('draws no layer without pieces and no drink without volume', () => {
    const plain = jarGeometry({ ...litre, volume_mL: 800, pieces_mL: 0 }, 100);
    expect(plain.piecesBottom).toBe(plain.liquidTop);
    const empty = jarGeometry({ ...litre, volume_mL: 0, pieces_mL: 0 }, 100);
    expect(empty.liquidTop).toBe(empty.height);
  });

  it('says by how much a jar would run over and draws it full', () => {
    const over = jarGeometry({ ...litre, volume_mL: 1100, pieces_mL: 100 }, 100);
    expect(over.fillFraction).toBeCloseTo(1.1, 12);
    expect(over.liquidTop).toBe(0);
  });

  it('draws paths of plain numbers', () => {
    const { outline } = jarGeometry({ ...litre, volume_mL: 731.234, pieces_mL: 12 }, 76);
    expect(outline).toMatch(/^[MLZ0-9. ]+$/);
  });
});
