import { describe, expect, it } from 'vitest';
import { twoLines } from '#renderer/charts/two-lines.ts';

describe('twoLines(name, most)', () => {
  it('leaves a name that fits on one line', () => {
    expect(twoLines('Sour cherry', 11)).toEqual(['Sour cherry']);
  });
  it('breaks between words, the first line as full as it can be', () => {
    expect(twoLines('Apricot and lemon', 11)).toEqual(['Apricot and', 'lemon']);
    expect(twoLines('Pear and ginger', 8)).toEqual(['Pear and', 'ginger']);
  });
  it('cuts what is too long for its line, and says so', () => {
    expect(twoLines('Blackcurrants with vanilla and mint', 10)).toEqual(['Blackcurr…', 'with vani…']);
    expect(twoLines('Blackcurrants', 10)).toEqual(['Blackcurr…']);
  });
});
