import { describe, expect, it } from 'vitest';
import { calibrations_C, correctedGravity } from '#core/ferment/corrected-gravity.ts';
import { parseStrength } from '#core/ferment/parse-strength.ts';
import { units } from '#core/units/unit-table.ts';

const strength = (text: string, assumed = units.gPerL) => {
  const read = parseStrength(text, assumed);
  return read.ok ? read.value : read.problem.message;
};

describe('parseStrength(text, assumed)', () => {
  it('reads grams per litre, ounces per gallon, °Bx and SG', () => {
    expect(strength('60')).toBe(60);
    expect(strength('8 oz/gal')).toBeCloseTo((8 * 28.349523125) / 3.785411784, 9);
    expect(strength('8', units.ozPerGal)).toBeCloseTo(59.913, 2);
    // 10 °Bx weigh 1038.115 kg/m³ at 20 °C (ICUMSA SPS-4): 103.81 g of sugar in a litre.
    expect(strength('10 brix')).toBeCloseTo(103.81, 2);
    expect(strength('1.03998')).toBe(1.03998);
    expect(strength('1.040')).toBeCloseTo(103.87, 1);
    expect(strength('SG 1.040')).toBeCloseTo(103.87, 1);
  });
  it('refuses what sugar in water can’t be, with the permitted range in the unit that was written', () => {
    expect(strength('2000 g/L')).toMatch(/no|beyond where sugar still dissolves at 20 °C; permitted: 0 to 892 g\/L/);
    expect(strength('90 brix')).toMatch(/permitted: 0 to 67\.1 °Bx/);
    expect(strength('1.390')).toMatch(/permitted: 1 to 1\.3318 SG/);
    expect(strength('-5 g/L')).toMatch(/negative; permitted: zero or more/);
    expect(strength('3 kg')).toMatch(/does not say how sweet/);
    expect(strength('sweet')).toMatch(/one clear number/);
  });
});

describe('correctedGravity(reading, sample, calibration)', () => {
  it('takes a reading at the stem’s own temperature as it is', () => {
    expect(correctedGravity(1.04, 20, calibrations_C.celsius20)).toMatchObject({ sg: expect.closeTo(1.04, 6) });
  });
  it('raises a warm reading and lowers a cold one', () => {
    // NBS Circular C440, from memory: about +0.66 °Bx at 30 °C and −0.46 °Bx at 10 °C around 10 °Bx; held to 0.1 °Bx.
    const warm = correctedGravity(1.03998, 30, 20);
    const cold = correctedGravity(1.03998, 10, 20);
    expect(warm.ok && Math.abs(warm.brix - 10.66)).toBeLessThan(0.1);
    expect(cold.ok && Math.abs(cold.brix - 9.54)).toBeLessThan(0.1);
  });
  it('reads a 60 °F stem in a 20 °C sample a little too low', () => {
    // Water falls from 999.01 kg/m³ at 15.56 °C to 998.21 at 20 °C (IAPWS-95): 0.0008 less what the glass gives back.
    const read = correctedGravity(1.03, 20, calibrations_C.fahrenheit60);
    expect(read.ok && read.sg - 1.03).toBeGreaterThan(0.0005);
    expect(read.ok && read.sg - 1.03).toBeLessThan(0.0009);
  });
  it('says in a sentence why it can’t', () => {
    expect(correctedGravity(1.03, 60, 20)).toMatchObject({ ok: false, code: 'sample-out-of-range' });
    expect(correctedGravity(1.35, 20, 20)).toMatchObject({ ok: false, code: 'reading-out-of-range' });
    expect(correctedGravity(0.995, 20, 20)).toMatchObject({ ok: false, code: 'lighter-than-water' });
  });
});
