import { describe, expect, it } from 'vitest';
import { parseReading } from '#core/units/parse-reading.ts';
import { fc } from '#tests/properties.ts';

const readOf = (text: string) => {
  const read = parseReading(text);
  return read.ok ? read.value : read.problem.code;
};

describe('parseReading(text)', () => {
  it('takes number and unit, or word and number, in any order', () => {
    const whole = { brix: 4.2, ph: 3.4, temperature_C: 21 };
    for (const text of [
      '4.2 brix, ph 3.4, 21 c',
      'pH 3.4 4.2°Bx 21°C',
      'ph: 3.4; temp 21 °C; brix 4.2',
      '21 celsius and 4.2 bx and 3.4 pH',
      '4.2bx/3.4ph/21C',
      'pH of 3.4, 4.2 brix at 21 degrees C.',
      '４.２ brix | ph=3.4 | 21℃',
    ]) {
      expect(readOf(text), text).toEqual(whole);
    }
  });

  it('takes a decimal comma and tells it from the comma between two readings', () => {
    expect(readOf('4,2 brix, ph 3,4, 21 c')).toEqual({ brix: 4.2, ph: 3.4, temperature_C: 21 });
  });

  it('takes a hydrometer with or without its unit, and °F (212 °F is 100 °C by definition)', () => {
    expect(readOf('1.012')).toEqual({ sg: 1.012 });
    expect(readOf('sg 1,048')).toEqual({ sg: 1.048 });
    const boiling = parseReading('212 F');
    expect(boiling.ok && boiling.value.temperature_C).toBeCloseTo(100, 9);
  });

  it('takes acidity with its acid, and asks for the acid where it is missing', () => {
    expect(readOf('ta 6.2 g/l lactic')).toEqual({ acidity: { g_per_L: 6.2, as: 'lactic' } });
    expect(readOf('5 g/L as acetic acid, pH 3.1')).toEqual({ acidity: { g_per_L: 5, as: 'acetic' }, ph: 3.1 });
    expect(readOf('6.2 g/l')).toBe('unit-missing');
  });

  it('refuses a bare number, a word it does not know, a range no jar has and the same thing twice', () => {
    expect(readOf('4.2')).toBe('unit-missing');
    expect(readOf('temp 21')).toBe('unit-missing');
    expect(readOf('4.2 brix, tasty')).toBe('not-understood');
    expect(readOf('pH 34')).toBe('off-range');
    expect(readOf('-3 brix')).toBe('off-range');
    expect(readOf('900 c')).toBe('off-range');
    expect(readOf('ph 3.4, ph 3.5')).toBe('said-twice');
    expect(readOf('   ')).toBe('empty');
  });

  it('lets no unit pass that does not belong to what is measured', () => {
    for (const text of ['ph 3.4 c', 'brix 4.2 f', '4.2 brix lactic', 'ph 3.4 acetic', 'acidity 6.2 c lactic']) {
      expect(['not-understood', 'unit-missing'], text).toContain(readOf(text));
    }
    expect(readOf('temp 70 g/L')).toBe('unit-missing');
    expect(readOf('4² brix')).toBe('unit-missing');
    expect(readOf('ph 3.4.1')).toBe('not-understood');
  });

  it('names what it could not read', () => {
    const read = parseReading('pH 3.4, four brix');
    expect(read.ok ? '' : read.problem.message).toContain('four brix');
    const long = parseReading(`${'x'.repeat(58)}🍓🍓 and so on`);
    expect(long.ok ? '' : long.problem.message).toContain(`“${'x'.repeat(58)}🍓…”`);
  });

  it('reads back what it would write (property)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 800 }), fc.integer({ min: 0, max: 140 }), (brix, ph) => {
        expect(readOf(`${brix / 10} brix, pH ${ph / 10}`)).toEqual({ brix: brix / 10, ph: ph / 10 });
      }),
      { seed: 5 },
    );
  });
});
