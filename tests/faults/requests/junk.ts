import fc from 'fast-check';

// Values that no field asks for, and texts that often undo a program.

export const oddTexts = [
  '',
  ' ',
  '\0',
  'a\0b',
  '\ud800',
  'a\udfffb',
  '\u202Egnp.exe',
  '\u2066abc',
  '\u200f\u200e',
  '\ufeff',
  '\u0301\u0301\u0301',
  'é',
  'ﬃ',
  'İ',
  '👩‍🍳',
  '<img src=x onerror=alert(1)>',
  "'; DROP TABLE tasters; --",
  '=1+1',
  '%s%n%x',
  '{{7*7}}',
  '__proto__',
  'constructor',
  'toString',
  'NaN',
  'Infinity',
  '-0',
  '1e309',
  '0x10',
  '2026-02-30T00:00:00Z',
  '9999-12-31T23:59:59Z',
  'x'.repeat(201),
  'x'.repeat(5000),
  '\n'.repeat(300),
  '"\\'.repeat(100),
  '[['.repeat(100),
] as const;

export const oddNumbers = [
  0,
  -0,
  1,
  -1,
  0.1,
  1e-300,
  5e-324,
  1e300,
  Number.MAX_VALUE,
  -Number.MAX_VALUE,
  Number.MAX_SAFE_INTEGER,
  Number.MAX_SAFE_INTEGER + 1,
  2 ** 31,
  2 ** 32,
  2 ** 53 + 2,
  -(2 ** 63),
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
] as const;

/** JSON with keys that an object has by nature, own keys here as a parser makes them. */
const natural = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'length', 'then'].map(
  (key) => JSON.parse(`{${JSON.stringify(key)}: {"name": "x"}}`) as object,
);

function nested(depth: number): unknown {
  let inner: unknown = 1;
  for (let level = 0; level < depth; level += 1) inner = level % 2 === 0 ? [inner] : { a: inner };
  return inner;
}

/** Anything at all: what JSON can carry and what Electron's messages can besides. */
export const junk: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(...oddTexts),
  fc.constantFrom<unknown>(...oddNumbers),
  fc.constantFrom<unknown>(null, undefined, true, false, [], {}, [[]], [null], 1n, new Date(0), new Map([['a', 1]])),
  fc.constantFrom<unknown>(new Uint8Array(3), /a/, nested(60), nested(3000), new Array(1000).fill(0), ...natural),
  // No slash: by chance it would be a place outside the folder that a run may write to.
  fc.jsonValue({ maxDepth: 3 }).filter((value) => !JSON.stringify(value).includes('/')),
);
