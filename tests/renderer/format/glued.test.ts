import { createElement } from 'react';
import { describe, expect, it } from 'vitest';
import { glued, gluedText } from '#renderer/format/glued.ts';

/** With the spaces that do not break drawn as a low line. */
const drawn = (sentence: string) => glued(sentence).replaceAll('\u00a0', '_');

describe('glued(sentence)', () => {
  it('keeps figure and unit together, and leaves other spaces alone', () => {
    expect(drawn('0.9 points above (95 % interval 0.1 to 1.8)')).toBe('0.9_points above (95_% interval 0.1 to 1.8)');
    expect(drawn('for every 10 g; 45.2 g/L, 4 °Bx, 37 h at 22 °C')).toBe(
      'for every 10_g; 45.2_g/L, 4_°Bx, 37_h at 22_°C',
    );
    expect(drawn('up to 4,17 bar (60 psi), 1 day, 4 weeks')).toBe('up to 4,17_bar (60_psi), 1_day, 4_weeks');
  });
  it('keeps the whole of a unit, and a kitchen fraction with what it is of', () => {
    expect(drawn('would make 3.2 % vol. It is a bound')).toBe('would make 3.2_%_vol. It is a bound');
    expect(drawn('There are 1 1/8 qt, 3/8 cup and 16 fl oz.')).toBe('There are 1_1/8_qt, 3/8_cup and 16_fl_oz.');
  });
  it('takes no word for a unit that only begins like one', () => {
    expect(drawn('3 glasses, 2 hourglasses, 5 Löffel, 4 minor doubts')).toBe(
      '3 glasses, 2 hourglasses, 5 Löffel, 4 minor doubts',
    );
  });
  it('leaves a figure without a unit, and a unit without a figure, as they are', () => {
    expect(drawn('Jar A1 and 2 of 3, in mL')).toBe('Jar A1 and 2 of 3, in mL');
  });
});

describe('gluedText(content)', () => {
  it('glues words, and hands on what is drawn already', () => {
    expect(gluedText('250 mL')).toBe('250\u00a0mL');
    const piece = createElement('b');
    expect(gluedText(piece)).toBe(piece);
    expect(gluedText(null)).toBeNull();
  });
});
