import { afterEach, describe, expect, it } from 'vitest';
import { formatQuantity } from '#core/units/format-quantity.ts';
import { parseNumber } from '#core/units/parse-number.ts';
import { counting, decimalMark, fixed, layDecimalMark, numberShown, withPoint } from '#core/words/figures.ts';
import { layWords, wordsOf } from '#core/words/laid-words.ts';
import { keyOf, phrase } from '#core/words/phrase.ts';

afterEach(() => {
  layWords(null);
  layDecimalMark('.');
});

const jars = (count: number) => (count === 1 ? phrase`${count} jar` : phrase`${count} jars`);

describe('phrase', () => {
  it('says its English while no words are laid in', () => {
    const what = 'jar 2';
    expect(phrase`Look at ${what}`).toBe('Look at jar 2');
    expect(phrase`Nothing is due now.`).toBe('Nothing is due now.');
  });

  it('is called by its English with numbered places', () => {
    expect(keyOf(['', ' left of ', ''])).toBe('{0} left of {1}');
    expect(keyOf(['Today'])).toBe('Today');
  });

  it('says the words laid in, places in any order and as often as wanted, and English where they have none', () => {
    layWords(wordsOf('de', { '{0} left of {1}': 'von {1} sind {0} übrig ({0})', Today: 'Heute' }));
    expect(phrase`${'2 L'} left of ${'5 L'}`).toBe('von 5 L sind 2 L übrig (2 L)');
    expect(phrase`Today`).toBe('Heute');
    expect(phrase`Tomorrow`).toBe('Tomorrow');
  });

  it('chooses the plural form by the number in the named place', () => {
    layWords(
      wordsOf('pl', {
        '{0} jar': '{0} słoik',
        '{0} jars': { by: 0, few: '{0} słoiki', many: '{0} słoików', other: '{0} słoika' },
      }),
    );
    expect([1, 3, 5, 22].map(jars)).toEqual(['1 słoik', '3 słoiki', '5 słoików', '22 słoiki']);
  });

  it('goes by the number in a figure that is shown with thousands apart', () => {
    layWords(wordsOf('pl', { '{0} jars': { by: 0, few: 'few', many: 'many', other: 'other' } }));
    expect(phrase`${counting(12_002)} jars`).toBe('few');
    expect(phrase`${counting(12_005)} jars`).toBe('many');
  });

  it('says English again once the words are taken out, at a place that was said before', () => {
    const said = () => phrase`Today`;
    layWords(wordsOf('de', { Today: 'Heute' }));
    expect(said()).toBe('Heute');
    layWords(null);
    expect(said()).toBe('Today');
  });
});

describe('figures', () => {
  it('show the decimal mark that was chosen, in figures alone and in phrases', () => {
    layDecimalMark(',');
    expect(decimalMark()).toBe(',');
    expect(fixed(2.345, 1)).toBe('2,3');
    expect(phrase`about ${2.5} h`).toBe('about 2,5 h');
    expect(counting(12_500)).toBe('12.500');
    layDecimalMark('.');
    expect(fixed(-2.345, 1)).toBe('-2.3');
    expect(counting(12_500)).toBe('12,500');
  });

  it('are read back as the numbers they stand for', () => {
    for (const mark of ['.', ','] as const) {
      layDecimalMark(mark);
      expect(numberShown(counting(12_500))).toBe(12_500);
      expect(numberShown(fixed(2.5, 2))).toBe(2.5);
      expect(numberShown('−3 °C')).toBe(-3);
    }
    expect(numberShown('none')).toBeNaN();
  });

  it('stand so in quantities, which are read back as they were shown', () => {
    layDecimalMark(',');
    expect(formatQuantity(946.35, 'volume', 'metric')).toBe('946 mL');
    expect(formatQuantity(1250, 'mass', 'metric')).toBe('1,25 kg');
    expect(parseNumber(formatQuantity(1.052, 'sg', 'metric'))).toEqual({ value: 1.052, rest: '' });
    layDecimalMark('.');
    expect(parseNumber('1,052')).toBeNull();
  });

  it('have the point in files, and the chosen mark again afterwards, also when the work failed', async () => {
    layDecimalMark(',');
    expect(await withPoint(async () => fixed(2.5, 1))).toBe('2.5');
    await expect(withPoint(() => Promise.reject(new Error('full')))).rejects.toThrow('full');
    expect(fixed(2.5, 1)).toBe('2,5');
  });
});
