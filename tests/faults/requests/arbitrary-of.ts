import fc from 'fast-check';
import { junk, oddNumbers, oddTexts } from './junk.ts';

/** As much of JSON Schema as the contract's inputs use. */
export interface Shape {
  readonly type?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly format?: string;
  readonly pattern?: string;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly items?: Shape | boolean;
  readonly prefixItems?: readonly Shape[];
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Shape | boolean;
  readonly propertyNames?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly oneOf?: readonly Shape[];
  readonly allOf?: readonly Shape[];
}

/** What stands in the kitchen, so that a made-up request meets real rows. */
export interface Known {
  /** Ids by what a field that holds them is called. */
  readonly ids: Readonly<Record<string, readonly string[]>>;
  readonly names: readonly string[];
  /** Places on the disk that may be written to or are no places. */
  readonly places: readonly string[];
}

const moments = [
  '2026-05-01T09:00:00+02:00',
  '2026-04-20T00:00:00Z',
  '2026-05-20T23:59:59.999Z',
  '1900-01-01T00:00:00Z',
  '2199-12-31T23:59:59+14:00',
];

function textOf(shape: Shape, field: string, known: Known): fc.Arbitrary<unknown> {
  if (shape.format === 'date-time') return fc.constantFrom(...moments);
  if (shape.pattern?.startsWith('^[0-9a-f]{8}') === true || shape.format === 'uuid') {
    const own = known.ids[field] ?? [];
    const all = Object.values(known.ids).flat();
    return fc.oneof(
      { weight: 6, arbitrary: fc.constantFrom(...(own.length === 0 ? all : own)) },
      { weight: 1, arbitrary: fc.constantFrom(...all) },
      { weight: 1, arbitrary: fc.uuid() },
    );
  }
  // A place on the disk, by its name or by the contract's own bounds for one.
  const isPlace = field === 'to' || field === 'file' || (shape.minLength === 1 && shape.maxLength === 4000);
  if (isPlace) return fc.constantFrom(...known.places);
  const most = Math.min(shape.maxLength ?? 60, 60);
  return fc.oneof(
    { weight: 16, arbitrary: fc.constantFrom(...known.names.map((name) => name.slice(0, most))) },
    { weight: 4, arbitrary: fc.string({ minLength: shape.minLength ?? 0, maxLength: most, unit: 'grapheme' }) },
    { weight: 1, arbitrary: fc.constantFrom(...oddTexts) },
    { weight: 1, arbitrary: fc.constant('y'.repeat(Math.min(shape.maxLength ?? 60, 5000))) },
  );
}

function numberOf(shape: Shape): fc.Arbitrary<unknown> {
  const low = shape.minimum ?? shape.exclusiveMinimum ?? -1e6;
  const high = shape.maximum ?? shape.exclusiveMaximum ?? 1e6;
  const edges = [low, high, low - 1, high + 1, low + 1e-9, high - 1e-9, (low + high) / 2];
  const within =
    shape.type === 'integer'
      ? fc.integer({ min: Math.ceil(Math.max(low, -2e9)), max: Math.floor(Math.min(high, 2e9)) })
      : fc.double({ min: low, max: high, noNaN: true });
  const small =
    shape.type === 'integer'
      ? fc.integer({
          min: Math.ceil(Math.max(low, -1e4)),
          max: Math.max(Math.ceil(low), Math.floor(Math.min(high, 40))),
        })
      : fc.double({ min: Math.max(low, -1000), max: Math.max(low, Math.min(high, 1000)), noNaN: true });
  return fc.oneof(
    { weight: 16, arbitrary: small },
    { weight: 4, arbitrary: within },
    { weight: 1, arbitrary: fc.constantFrom(...edges) },
    { weight: 1, arbitrary: fc.constantFrom(...oddNumbers) },
  );
}

function listOf(shape: Shape, field: string, known: Known): fc.Arbitrary<unknown> {
  if (shape.prefixItems !== undefined) {
    return fc.tuple(...shape.prefixItems.map((each) => arbitraryOf(each, field, known)));
  }
  const item = typeof shape.items === 'object' ? arbitraryOf(shape.items, field.replace(/s$/, ''), known) : junk;
  const least = shape.minItems ?? 0;
  const most = shape.maxItems ?? 8;
  return fc.oneof(
    { weight: 8, arbitrary: fc.array(item, { minLength: least, maxLength: Math.max(least, Math.min(most, 5)) }) },
    { weight: 1, arbitrary: fc.array(item, { minLength: least, maxLength: Math.max(least, Math.min(most, 30)) }) },
    // One value many times over: duplicates, and one more than may be.
    {
      weight: 1,
      arbitrary: fc
        .tuple(item, fc.integer({ min: 0, max: Math.min(most + 1, 200) }))
        .map(([each, times]) => new Array(times).fill(each)),
    },
  );
}

function recordOf(shape: Shape, known: Known): fc.Arbitrary<unknown> {
  const members: Record<string, fc.Arbitrary<unknown>> = {};
  for (const [name, each] of Object.entries(shape.properties ?? {})) members[name] = arbitraryOf(each, name, known);
  const named = fc.record(members, { requiredKeys: [...(shape.required ?? [])].filter((name) => name in members) });
  if (typeof shape.additionalProperties !== 'object') return named;
  const more = arbitraryOf(shape.additionalProperties, '', known);
  const key = fc.oneof(
    { weight: 5, arbitrary: fc.constantFrom(...known.names) },
    { weight: 1, arbitrary: fc.constantFrom(...oddTexts) },
  );
  return fc.tuple(named, fc.dictionary(key, more, { maxKeys: 5 })).map(([own, other]) => ({ ...other, ...own }));
}

/**
 * Values of a schema: most of them valid, some at or just beyond its edges.
 *
 * @param field the member's name, for which `known` may have a real row
 */
export function arbitraryOf(shape: Shape, field: string, known: Known): fc.Arbitrary<unknown> {
  if (shape.const !== undefined) return fc.constant(shape.const);
  if (shape.enum !== undefined) return fc.constantFrom(...shape.enum);
  const either = shape.anyOf ?? shape.oneOf;
  if (either !== undefined) return fc.oneof(...either.map((each) => arbitraryOf(each, field, known)));
  if (shape.allOf !== undefined)
    return arbitraryOf({ ...shape, allOf: undefined, ...Object.assign({}, ...shape.allOf) } as Shape, field, known);
  switch (shape.type) {
    case 'string':
      return textOf(shape, field, known);
    case 'number':
    case 'integer':
      return numberOf(shape);
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    case 'array':
      return listOf(shape, field, known);
    case 'object':
      return recordOf(shape, known);
    default:
      return fc.oneof(fc.jsonValue({ maxDepth: 2 }), junk);
  }
}
