// Arithmetic in the field of 256 elements that QR codes use: polynomials over two, modulo x⁸ + x⁴ + x³ + x² + 1.

const powers: number[] = [];
const exponents: number[] = [];
for (let exponent = 0, power = 1; exponent < 255; exponent += 1) {
  powers[exponent] = power;
  exponents[power] = exponent;
  power = power < 128 ? power * 2 : (power * 2) ^ 0x11d;
}

/** The generator 2 raised to a power. */
export function powerOfTwo(exponent: number): number {
  return powers[exponent % 255] ?? 1;
}

/** The product of two elements, each 0–255. */
export function fieldProduct(one: number, other: number): number {
  if (one === 0 || other === 0) return 0;
  return powerOfTwo((exponents[one] ?? 0) + (exponents[other] ?? 0));
}
