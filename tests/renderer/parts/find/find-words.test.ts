import { describe, expect, it } from 'vitest';
import { factsOf } from '#renderer/parts/find/find-words.ts';

describe('factsOf(found)', () => {
  it('says a trial’s question in words and a day as this window writes it', () => {
    expect(factsOf({ kind: 'trial', id: null, name: 'n', facts: 'days' })).toBe('How many days');
    expect(factsOf({ kind: 'tasting', id: null, name: 'n', facts: '2026-11-10' })).toBe('10 Nov 2026');
    expect(factsOf({ kind: 'taster', id: null, name: 'n', facts: 'avoids nuts' })).toBe('avoids nuts');
  });
});
