// A reader of its own: shares nothing with the encoder, so that a mistake in one is not forgiven by the other.

interface Layout {
  readonly blocks: number;
  readonly data: number;
  readonly correction: number;
}

/** Level M of versions 1–5. Source: ISO/IEC 18004:2015, table 9, from memory. */
const layouts: readonly Layout[] = [
  { blocks: 1, data: 16, correction: 10 },
  { blocks: 1, data: 28, correction: 16 },
  { blocks: 1, data: 44, correction: 26 },
  { blocks: 2, data: 32, correction: 18 },
  { blocks: 2, data: 43, correction: 24 },
];

/** Level M's fifteen bits for masks 0–7. Source: ISO/IEC 18004:2015, table C.1, from memory. */
const formats = [0x5412, 0x5125, 0x5e7c, 0x5b4b, 0x45f9, 0x40ce, 0x4f97, 0x4aa0];

const letters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/** Multiplies by shifting and adding, without a table of powers. */
function times(one: number, other: number): number {
  let product = 0;
  for (let bit = 7; bit >= 0; bit -= 1) {
    product = (product << 1) ^ (product & 0x80 ? 0x11d : 0);
    if ((other >> bit) & 1) product ^= one;
  }
  return product;
}

/** The block as a polynomial at 2⁰ … 2^(count − 1): zero everywhere when nothing is damaged. */
function syndromes(block: readonly number[], count: number): number[] {
  let root = 1;
  return Array.from({ length: count }, () => {
    const value = block.reduce((sum, codeword) => times(sum, root) ^ codeword, 0);
    root = times(root, 2);
    return value;
  });
}

function turns(mask: number, i: number, j: number): boolean {
  const product = i * j;
  switch (mask) {
    case 0:
      return (i + j) % 2 === 0;
    case 1:
      return i % 2 === 0;
    case 2:
      return j % 3 === 0;
    case 3:
      return (i + j) % 3 === 0;
    case 4:
      return ((i >> 1) + Math.trunc(j / 3)) % 2 === 0;
    case 5:
      return product % 6 === 0;
    case 6:
      return ((product & 1) + (product % 3)) % 2 === 0;
    default:
      return (((i + j) % 2) + (product % 3)) % 2 === 0;
  }
}

/** Both copies of the format, the first bit first. */
function formatsOf(modules: readonly (readonly boolean[])[]): [number, number] {
  const size = modules.length;
  const first = [
    ...[0, 1, 2, 3, 4, 5, 7, 8].map((column) => [8, column] as const),
    ...[7, 5, 4, 3, 2, 1, 0].map((row) => [row, 8] as const),
  ];
  const second = [
    ...[1, 2, 3, 4, 5, 6, 7].map((up) => [size - up, 8] as const),
    ...[8, 7, 6, 5, 4, 3, 2, 1].map((left) => [8, size - left] as const),
  ];
  const read = (places: readonly (readonly [number, number])[]) =>
    places.reduce((bits, [row, column]) => bits * 2 + (modules[row]?.[column] ? 1 : 0), 0);
  return [read(first), read(second)];
}

function isFunction(size: number, row: number, column: number): boolean {
  const inCorner = (row < 9 && column < 9) || (row < 9 && column >= size - 8) || (row >= size - 8 && column < 9);
  const middle = size - 7;
  const inAlignment = size > 21 && Math.abs(row - middle) <= 2 && Math.abs(column - middle) <= 2;
  return inCorner || row === 6 || column === 6 || inAlignment;
}

function codewordsOf(modules: readonly (readonly boolean[])[], mask: number): number[] {
  const size = modules.length;
  const bits: number[] = [];
  const pairs = Array.from({ length: (size - 1) / 2 }, (_, pair) => size - 1 - 2 * pair).map((right) =>
    right <= 6 ? right - 1 : right,
  );
  for (const [turn, right] of pairs.entries()) {
    for (let step = 0; step < size; step += 1) {
      const row = turn % 2 === 0 ? size - 1 - step : step;
      for (const column of [right, right - 1]) {
        if (isFunction(size, row, column)) continue;
        bits.push((modules[row]?.[column] ?? false) !== turns(mask, row, column) ? 1 : 0);
      }
    }
  }
  return Array.from({ length: Math.floor(bits.length / 8) }, (_, place) =>
    Number.parseInt(bits.slice(place * 8, place * 8 + 8).join(''), 2),
  );
}

function textOf(data: readonly number[]): string {
  let bits = data.map((codeword) => codeword.toString(2).padStart(8, '0')).join('');
  const take = (length: number) => {
    const value = Number.parseInt(bits.slice(0, length), 2);
    bits = bits.slice(length);
    return value;
  };
  const mode = take(4);
  if (mode === 4) return String.fromCharCode(...Array.from({ length: take(8) }, () => take(8)));
  let text = '';
  if (mode === 2) {
    for (let left = take(9); left > 0; left -= 2) {
      const value = left === 1 ? take(6) : take(11);
      text += left === 1 ? letters[value] : `${letters[Math.trunc(value / 45)]}${letters[value % 45]}`;
    }
    return text;
  }
  if (mode !== 1) throw new Error(`mode ${mode} is none that is read here`);
  for (let left = take(10); left > 0; left -= 3) {
    const digits = Math.min(3, left);
    text += String(take([0, 4, 7, 10][digits] ?? 10)).padStart(digits, '0');
  }
  return text;
}

export interface ReadQr {
  readonly text: string;
  readonly mask: number;
  readonly codewords: readonly number[];
  /** All zero where the error correction fits its data. */
  readonly syndromes: readonly number[];
}

/** Reads an undamaged code. */
export function readQr(modules: readonly (readonly boolean[])[]): ReadQr {
  const [one, other] = formatsOf(modules);
  if (one !== other) throw new Error('the two copies of the format differ');
  const mask = formats.indexOf(one);
  if (mask < 0) throw new Error(`format ${one.toString(16)} is not of level M`);
  const layout = layouts[(modules.length - 21) / 4];
  if (layout === undefined) throw new Error(`${modules.length} modules are not versions 1–5`);
  const all = codewordsOf(modules, mask);
  const blocks = Array.from({ length: layout.blocks }, (_, block) => {
    const data = Array.from({ length: layout.data }, (_unused, place) => all[place * layout.blocks + block] ?? -1);
    const after = layout.data * layout.blocks;
    const correction = Array.from(
      { length: layout.correction },
      (_unused, place) => all[after + place * layout.blocks + block] ?? -1,
    );
    return { data, whole: [...data, ...correction] };
  });
  return {
    text: textOf(blocks.flatMap(({ data }) => data)),
    mask,
    codewords: all,
    syndromes: blocks.flatMap(({ whole }) => syndromes(whole, layout.correction)),
  };
}
