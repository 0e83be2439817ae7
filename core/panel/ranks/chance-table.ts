const empty = -1;

/**
 * Adds up chances by a code, a whole number from 0 below 2³¹.
 *
 * Method: open addressing in two flat arrays that double when half full; several times quicker than a Map of numbers.
 */
export class ChanceTable {
  #codes = new Int32Array(256).fill(empty);
  #chances = new Float64Array(256);
  #size = 0;

  get size(): number {
    return this.#size;
  }

  add(code: number, chance: number): void {
    const codes = this.#codes;
    const mask = codes.length - 1;
    let at = (Math.imul(code, 0x9e3779b1) >>> 8) & mask;
    while (codes[at] !== code) {
      if (codes[at] === empty) {
        codes[at] = code;
        this.#size += 1;
        this.#chances[at] = chance;
        if (this.#size * 2 > codes.length) this.#grow();
        return;
      }
      at = (at + 1) & mask;
    }
    this.#chances[at] = (this.#chances[at] as number) + chance;
  }

  forEach(visit: (code: number, chance: number) => void): void {
    const codes = this.#codes;
    for (let at = 0; at < codes.length; at += 1) {
      if (codes[at] !== empty) visit(codes[at] as number, this.#chances[at] as number);
    }
  }

  #grow(): void {
    const [codes, chances] = [this.#codes, this.#chances];
    this.#codes = new Int32Array(codes.length * 2).fill(empty);
    this.#chances = new Float64Array(codes.length * 2);
    this.#size = 0;
    for (let at = 0; at < codes.length; at += 1) {
      if (codes[at] !== empty) this.add(codes[at] as number, chances[at] as number);
    }
  }
}
