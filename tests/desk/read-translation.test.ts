import { describe, expect, it } from 'vitest';
import { readTranslation } from '#desk/tongue/read-translation.ts';

const phrases = new Map([
  ['Today', 0],
  ['{0} jars', 1],
  ['{0} of {1}', 2],
]);
const read = (value: unknown) => readTranslation(JSON.stringify(value), phrases, 'de');

describe('readTranslation(text, phrases, language)', () => {
  it('keeps what belongs to a phrase, in any order of its places, and plural forms', () => {
    const words = {
      Today: 'Heute',
      '{0} of {1}': 'von {1}: {0}',
      '{0} jars': { by: 0, one: '{0} Glas', other: '{0} Gläser' },
    };
    expect(read(words)).toEqual({ words, unknown: 0 });
    expect(readTranslation('\uFEFF{"Today":"Heute"}', phrases, 'de').words).toEqual({ Today: 'Heute' });
  });

  it('leaves out and counts what belongs to no phrase, or puts something where the phrase has nothing', () => {
    const odd = {
      Tomorrow: 'Morgen',
      Today: 'Heute {0}',
      '{0} of {1}': { by: 2, other: 'x' },
      '{0} jars': { by: 0, one: 'x' },
      constructor: 'x',
    };
    expect(read(odd)).toEqual({ words: {}, unknown: 5 });
    expect(read({ Today: 5, '{0} jars': ['x'], '{0} of {1}': { by: 0, other: '{0}', dozen: 'x' } }).unknown).toBe(3);
    expect(readTranslation('{"__proto__": "x", "Today": "Heute"}', phrases, 'de')).toEqual({
      words: { Today: 'Heute' },
      unknown: 1,
    });
  });

  it('says in a sentence that a file is no list of words', () => {
    expect(() => readTranslation('{"Today": ', phrases, 'de')).toThrow('de.json can’t be read');
    for (const value of [null, [], 'Heute', 5]) expect(() => read(value)).toThrow('de.json can’t be used');
  });
});
