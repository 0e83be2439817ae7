import { type DunnettDistribution, dunnettDistribution } from '#core/numeric/dunnett-distribution.ts';
import { type StudentizedRange, studentizedRange } from '#core/numeric/studentized-range.ts';

/** How many prepared distributions of each kind are kept. */
const mostKept = 64;

/** Keeps what was prepared last; an answer never depends on what is kept, only how soon it comes. */
function kept<Key, Value>(prepare: (key: Key) => Value, name: (key: Key) => string): (key: Key) => Value {
  const known = new Map<string, Value>();
  return (key) => {
    const label = name(key);
    const value = known.get(label) ?? prepare(key);
    known.delete(label);
    known.set(label, value);
    for (const oldest of known.keys()) {
      if (known.size <= mostKept) break;
      known.delete(oldest);
    }
    return value;
  };
}

/** The studentized range of so many samples, prepared once. */
export const rangeOf: (samples: number) => StudentizedRange = kept(studentizedRange, String);

/** Dunnett's distribution for these loadings, prepared once. */
export const dunnettOf: (loadings: readonly number[]) => DunnettDistribution = kept(dunnettDistribution, (loadings) =>
  loadings.map((loading) => loading.toPrecision(10)).join(),
);
