import { describe, expect, it } from 'vitest';
import { cupRuns } from '#renderer/pages/stickers/cup-runs.ts';

const orders = [
  {
    taster: 'a',
    name: 'Ana',
    warnings: [],
    sittings: [
      { sitting: 1, codes: ['731', '204'] },
      { sitting: 2, codes: ['204', '731'] },
    ],
  },
  { taster: 'b', name: 'Ben', warnings: [], sittings: [{ sitting: 1, codes: ['204', '731'] }] },
];

describe('cupRuns(orders, order)', () => {
  it('goes taster by taster, sitting by sitting, in the order of serving', () => {
    expect(cupRuns(orders, 'taster')).toEqual([
      { name: 'Ana, sitting 1', codes: ['731', '204'] },
      { name: 'Ana, sitting 2', codes: ['204', '731'] },
      { name: 'Ben', codes: ['204', '731'] },
    ]);
  });

  it('goes code by code with the same cups', () => {
    expect(cupRuns(orders, 'code')).toEqual([
      { name: '204', codes: ['204', '204', '204'] },
      { name: '731', codes: ['731', '731', '731'] },
    ]);
  });

  it('has nothing for a tasting without tasters', () => {
    expect(cupRuns([], 'taster')).toEqual([]);
    expect(cupRuns([], 'code')).toEqual([]);
  });
});
