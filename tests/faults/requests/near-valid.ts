import fc from 'fast-check';
import { junk } from './junk.ts';

type Spot = readonly (string | number)[];

function spots(value: unknown, at: Spot = [], found: Spot[] = []): Spot[] {
  if (found.length > 200) return found;
  found.push(at);
  if (Array.isArray(value)) value.slice(0, 10).forEach((each, place) => void spots(each, [...at, place], found));
  else if (value !== null && typeof value === 'object' && Object.getPrototypeOf(value) === Object.prototype)
    for (const [name, each] of Object.entries(value)) spots(each, [...at, name], found);
  return found;
}

function changedAt(value: unknown, [first, ...rest]: Spot, change: (old: unknown) => unknown): unknown {
  if (first === undefined) return change(value);
  if (Array.isArray(value)) {
    const copy: unknown[] = [...value];
    copy[Number(first)] = changedAt(copy[Number(first)], rest, change);
    return copy;
  }
  const whole = value as Record<string, unknown>;
  return { ...whole, [first]: changedAt(whole[first], rest, change) };
}

function without(old: unknown): unknown {
  if (Array.isArray(old)) return old.slice(1);
  if (old === null || typeof old !== 'object') return undefined;
  const entries = Object.entries(old);
  return Object.fromEntries(entries.slice(1));
}

function withMore(old: unknown, more: unknown): unknown {
  if (Array.isArray(old)) return [...old, more];
  if (old === null || typeof old !== 'object') return [old];
  return JSON.parse(`{"__proto__":{"x":1},"another":1}`) as unknown;
}

/** Values that are nearly of the form: one or two places of a good one are spoilt. */
export function nearValid(valid: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  const spoil = fc.tuple(fc.nat(), fc.constantFrom('junk', 'junk', 'less', 'more', 'text'), junk);
  return fc.tuple(valid, fc.array(spoil, { minLength: 1, maxLength: 2 })).map(([value, spoils]) =>
    spoils.reduce<unknown>((now, [place, how, bad]) => {
      const all = spots(now);
      const spot = all[place % all.length] ?? [];
      return changedAt(now, spot, (old) => {
        if (how === 'less') return without(old);
        if (how === 'more') return withMore(old, bad);
        return how === 'text' ? String(typeof old === 'object' ? 'object' : old) : bad;
      });
    }, value),
  );
}
