import { describe, expect, it } from 'vitest';
import { glued } from '#renderer/format/glued.ts';

const held = '\u00a0';

describe('glued(sentence)', () => {
  it('keeps figure and unit together, and leaves other spaces alone', () => {
    expect(glued('0.9 points above (95 % interval 0.1 to 1.8)')).toBe(
      `0.9 points above (95${held}% interval 0.1 to 1.8)`,
    );
    expect(glued('for every 10 g; 45.2 g/L, 4 °Bx, 37 h at 22 °C')).toBe(
      `for every 10${held}g; 45.2${held}g/L, 4${held}°Bx, 37${held}h at 22${held}°C`,
    );
  });
  it('takes no word for a unit that only begins like one', () => {
    expect(glued('3 glasses, 2 hours, 5 Löffel')).toBe('3 glasses, 2 hours, 5 Löffel');
  });
});
