import { describe, expect, it } from 'vitest';
import { pantryTable } from '#core/pantry/pantry-table.ts';
import { fruitColour, jarColour } from '#renderer/parts/shelf/fruit-colour.ts';

const of = (ingredient: string, mass_g: number) => ({ ingredient, mass_g, state: 'fresh' as const });

describe('fruitColour(name)', () => {
  it('is the pantry’s own colour for each of its ingredients', () => {
    for (const { name, colour } of pantryTable) expect(fruitColour(name), name).toBe(colour);
  });
  it('goes by the words of a name that the pantry does not bring', () => {
    expect(fruitColour('Aunt May’s strawberry jam')).toBe('#d1404f');
    expect(fruitColour('moon dust')).toMatch(/^#[0-9a-f]{6}$/);
  });
});

describe('jarColour(additions)', () => {
  it('is that of the heaviest thing that is no sweetener', () => {
    expect(jarColour([of('sugar', 90), of('raspberries', 60), of('mango', 20)])).toBe(fruitColour('raspberries'));
    expect(jarColour([of('sugar', 90)])).toBe(fruitColour('sugar'));
    expect(jarColour([])).toBeNull();
  });
});
