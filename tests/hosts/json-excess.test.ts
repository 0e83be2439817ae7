import { describe, expect, it } from 'vitest';
import { jsonExcess } from '#shared/json-excess.ts';
import { fc } from '#tests/properties.ts';

function depthOf(value: unknown): number {
  if (value === null || typeof value !== 'object') return 0;
  return 1 + Math.max(0, ...Object.values(value).map(depthOf));
}

describe('jsonExcess(text, bounds)', () => {
  it('counts brackets that stand open, and none inside strings', () => {
    expect(jsonExcess('[[[]]]', { depth: 2, members: 50, charactersEach: 0 })).toBe('deep');
    expect(jsonExcess('[[],[],[]]', { depth: 2, members: 50, charactersEach: 0 })).toBeNull();
    expect(jsonExcess('["[[[[", "\\"[[[[", "\\\\"]', { depth: 1, members: 50, charactersEach: 0 })).toBeNull();
  });

  it('says dense when more begins than the length is worth, and lets small texts be', () => {
    const bomb = `[${'{},'.repeat(10_000)}{}]`;
    expect(jsonExcess(bomb, { depth: 8, members: 50, charactersEach: 40 })).toBe('dense');
    expect(jsonExcess(bomb, { depth: 8, members: 50, charactersEach: 0 })).toBeNull();
    expect(jsonExcess('[{},{},{}]', { depth: 8, members: 50, charactersEach: 40 })).toBeNull();
  });

  it('counts the members of one object, not the entries of a list nor those of objects within', () => {
    const bounds = { depth: 9, members: 3, charactersEach: 0 };
    expect(jsonExcess('{"a":1,"b":2,"c":3}', bounds)).toBeNull();
    expect(jsonExcess('{"a":1,"b":2,"c":3,"d":4}', bounds)).toBe('crowded');
    expect(jsonExcess('[1,2,3,4,5,6,7,8,{"a,,,,":[1,2,3,4,5]},{"b":{"c":1,"d":2},"e":{}}]', bounds)).toBeNull();
  });

  it('agrees with the depth of any value, indented or not', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6, stringUnit: 'binary' }), fc.nat(2), (value, indent) => {
        const depth = depthOf(value);
        const text = JSON.stringify(value, null, indent);
        return (
          jsonExcess(text, { depth: Math.max(depth, 1), members: 50, charactersEach: 0 }) === null &&
          (depth < 2 || jsonExcess(text, { depth: depth - 1, members: 50, charactersEach: 0 }) === 'deep')
        );
      }),
      { numRuns: 500 },
    );
  });
});
