import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

// A chart comes with a table twin and can be taken along as picture and figures: whoever draws one sets it into the frame that has these.

const renderer = join(import.meta.dirname, '..', '..', 'renderer');
const sources = new Map(
  readdirSync(renderer, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.tsx'))
    .map((name) => [name, readFileSync(join(renderer, name), 'utf8')]),
);

const hasFrame = (source: string) => /<ChartFrame\b|<TakeChart\b/.test(source);
/** A drawing is what stands in a chart's own box; its marks alone are none. */
const drawings = [...sources].filter(([, source]) =>
  /import [^;]*\bResponsiveContainer\b[^;]*from 'recharts'/s.test(source),
);

describe('every chart', () => {
  it('there is: the house draws with one library, in files that this test can find', () => {
    expect(drawings.length).toBeGreaterThanOrEqual(9);
  });

  it.each(drawings)('%s stands in a frame with its table and its ways out', (_, source) => {
    if (hasFrame(source)) return;
    const names = [...source.matchAll(/export function (\w+)/g)].map(([, name]) => name ?? '');
    const framed = [...sources.values()].filter(
      (other) => hasFrame(other) && names.some((name) => new RegExp(`<${name}\\b`).test(other)),
    );
    expect(framed.length, `${names.join(', ')} is drawn nowhere inside a ChartFrame`).toBeGreaterThan(0);
  });

  it('has in its frame a table, and in its ways out picture, SVG, PNG and CSV', () => {
    const frame = sources.get(join('charts', 'chart-frame.tsx')) ?? '';
    expect(frame).toMatch(/\{table\}/);
    expect(frame).toMatch(/<TakeChart\b/);
    const framedByHand = [...sources].filter(
      ([name, source]) => name !== join('charts', 'chart-frame.tsx') && /<TakeChart\b/.test(source),
    );
    for (const [name, source] of framedByHand) expect(source, name).toMatch(/<DataTable\b/);
    const ways = sources.get(join('charts', 'take-chart.tsx')) ?? '';
    for (const way of ['copyPicture', 'savePng', 'saveSvg', 'saveCsv']) expect(ways).toContain(`words.${way}`);
  });
});
