/** What one size of code holds at error correction level M. */
export interface QrVersion {
  readonly version: number;
  /** Modules along a side: 17 + 4 · version. */
  readonly size: number;
  readonly blocks: number;
  readonly dataEach: number;
  readonly correctionEach: number;
  /** Where the alignment pattern's middle lies, in both directions; null where there is none. */
  readonly alignment: number | null;
  /** Bits left over after the last codeword. */
  readonly remainderBits: number;
}

/** Versions 1 to 5, level M. Source: ISO/IEC 18004:2015, tables 1, 7 and 9 and annex E, typed from memory and read back by a scanner. */
export const qrVersions: readonly QrVersion[] = [
  { version: 1, size: 21, blocks: 1, dataEach: 16, correctionEach: 10, alignment: null, remainderBits: 0 },
  { version: 2, size: 25, blocks: 1, dataEach: 28, correctionEach: 16, alignment: 18, remainderBits: 7 },
  { version: 3, size: 29, blocks: 1, dataEach: 44, correctionEach: 26, alignment: 22, remainderBits: 7 },
  { version: 4, size: 33, blocks: 2, dataEach: 32, correctionEach: 18, alignment: 26, remainderBits: 7 },
  { version: 5, size: 37, blocks: 2, dataEach: 43, correctionEach: 24, alignment: 30, remainderBits: 7 },
];
