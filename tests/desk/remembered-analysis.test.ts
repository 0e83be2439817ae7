import { describe, expect, it, vi } from 'vitest';
import { analysePanel } from '#core/panel/analyse.ts';
import type { PanelInput } from '#core/panel/panel-analysis.ts';
import { rememberedAnalysis } from '#desk/findings/remembered-analysis.ts';

const panel = (score: number): PanelInput => ({
  scores: [
    { taster: 'Ana', sample: 'a', attribute: 'tang', score },
    { taster: 'Ana', sample: 'b', attribute: 'tang', score: 5 },
    { taster: 'Ben', sample: 'a', attribute: 'tang', score: 3 },
    { taster: 'Ben', sample: 'b', attribute: 'tang', score: 6 },
  ],
});

describe('rememberedAnalysis(input, analyse)', () => {
  it('works the same scores out once, and other scores anew', () => {
    const analyse = vi.fn(analysePanel);
    const first = rememberedAnalysis(panel(1), analyse);
    expect(rememberedAnalysis(panel(1), analyse)).toEqual(first);
    expect(analyse).toHaveBeenCalledTimes(1);
    expect(rememberedAnalysis(panel(2), analyse)).not.toEqual(first);
    expect(analyse).toHaveBeenCalledTimes(2);
  });

  it('forgets the oldest', () => {
    const analyse = vi.fn(analysePanel);
    for (let score = 100; score < 125; score += 1) rememberedAnalysis(panel(score), analyse);
    rememberedAnalysis(panel(100), analyse);
    expect(analyse).toHaveBeenCalledTimes(26);
  });

  it('keeps nothing of an analysis that was stopped', () => {
    const stop = () => {
      throw new Error('stopped');
    };
    expect(() => rememberedAnalysis(panel(30), stop)).toThrow('stopped');
    const analyse = vi.fn(analysePanel);
    rememberedAnalysis(panel(30), analyse);
    expect(analyse).toHaveBeenCalledTimes(1);
  });
});
