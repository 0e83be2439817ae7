import { describe, expect, it } from 'vitest';
import { moneyWords, priceWords } from '#renderer/format/money.ts';
import {
  type TypedAmount,
  typedMass,
  typedShare,
  typedStrength,
  typedSweetness,
  typedTemperature,
  typedVolume,
  typedWithin,
} from '#renderer/format/typed-amount.ts';

const strawberries = {
  name: 'strawberries',
  measures: [
    { unit: 'cup' as const, form: 'whole', mass_g: 144 },
    { unit: 'cup' as const, form: 'sliced', mass_g: 166 },
  ],
};
const value = (typed: TypedAmount) => (typed.kind === 'amount' ? typed.value : typed);
const message = (typed: TypedAmount) => (typed.kind === 'fault' ? typed.message : typed.kind);

describe('an amount as typed', () => {
  it('is read by scale or by the ingredient’s own measures', () => {
    expect(value(typedMass('1.2 kg', strawberries))).toBe(1200);
    // USDA SR28: a cup of sliced strawberries weighs 166 g.
    expect(value(typedMass('1/2 cup sliced', strawberries))).toBeCloseTo(83, 9);
    expect(typedMass('', strawberries)).toEqual({ kind: 'none' });
  });
  it('is a sweetness by any instrument; a bare number is °Bx', () => {
    expect(value(typedSweetness('3'))).toBeCloseTo(3, 6);
    expect(value(typedSweetness('2,6 °Bx'))).toBeCloseTo(2.6, 6);
    // ICUMSA SPS-4: 10 °Bx is SG 1.03998 (20/20) and 103.81 g/L.
    expect(value(typedSweetness('1.040'))).toBeCloseTo(10, 1);
    expect(value(typedSweetness('103.81 g/L'))).toBeCloseTo(10, 3);
    expect(typedSweetness('')).toEqual({ kind: 'none' });
    expect(message(typedSweetness('0'))).toBe('Write a sweetness above zero, such as 3 brix.');
    expect(message(typedSweetness('200 brix'))).toMatch(/permitted/i);
    expect(message(typedSweetness('20 °C'))).toMatch(/does not say how sweet/);
  });
  it('is asked about when kilograms look like grams', () => {
    expect(typedMass('75 kg', strawberries)).toMatchObject({ kind: 'doubt', insteadWords: '75 g', value: 75_000 });
    expect(typedVolume('750 L', 'metric')).toMatchObject({ kind: 'doubt', insteadWords: '750 mL' });
  });
  it.each<[TypedAmount, RegExp]>([
    [typedMass('75', strawberries), /Say of what/],
    [typedMass('1 cup', strawberries), /Say which: strawberries are measured/],
    [typedMass('1 cup', { name: 'moon dust', measures: [] }), /No weight is known for a cup of moon dust/],
    [typedMass('-1 g', strawberries), /negative; permitted: zero or more/],
    [typedMass('2000000 g', strawberries), /permitted: 0 to 1,000 kg/],
    [typedMass('20 °C', strawberries), /does not say how much/],
    [typedVolume('0', 'metric'), /above zero, up to 1,000 L/],
    [typedVolume('75 g', 'us'), /g is a mass; a volume is needed/],
    [typedTemperature('-300 c', 'metric'), /below absolute zero/],
    [typedTemperature('200 c', 'metric'), /permitted: −40 to 110 °C/],
    [typedStrength('950', 'metric'), /permitted: 0 to 892 g\/L/],
    [typedShare('120'), /permitted: 0 to 100/],
    [typedWithin('3', { unit: 'N', low: 0.001, high: 2, example: '0.1' }), /permitted: 0\.001 to 2 N/],
  ])('%o is refused with what is permitted', (typed, words) => expect(message(typed)).toMatch(words));
  it('takes a bare number in the kitchen’s own unit', () => {
    expect(value(typedVolume('2', 'us'))).toBeCloseTo(2 * 236.5882365, 6);
    expect(value(typedVolume('2', 'metric'))).toBe(2);
    expect(value(typedTemperature('72', 'us'))).toBeCloseTo(22.222, 3);
  });
});

describe('prices', () => {
  it('stand per kilogram or pound, per litre or quart, in the kitchen’s currency; none is null', () => {
    const price = { price_per_kg: 10, price_per_L: null };
    expect(priceWords(price, 'metric', '€')).toBe('€10.00 per kg');
    expect(priceWords(price, 'us', '$')).toBe('$4.54 per lb');
    expect(priceWords({ price_per_kg: null, price_per_L: 2 }, 'metric', 'SEK')).toBe('2.00 SEK per L');
    expect(priceWords({ price_per_kg: null, price_per_L: null }, 'metric', null)).toBeNull();
    expect(moneyWords(0.042, null)).toBe('0.042');
  });
});
