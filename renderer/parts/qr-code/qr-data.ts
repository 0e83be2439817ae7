import { type QrVersion, qrVersions } from './qr-version-table.ts';
import { errorCorrection } from './reed-solomon.ts';

const alphanumeric = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

function bits(value: number, length: number): number[] {
  return Array.from({ length }, (_, place) => (value >> (length - 1 - place)) & 1);
}

/** Three digits in ten bits, two in seven, one in four. */
function numericBits(text: string): number[] {
  const groups = text.match(/\d{1,3}/g) ?? [];
  return [
    ...bits(0b0001, 4),
    ...bits(text.length, 10),
    ...groups.flatMap((group) => bits(Number(group), [0, 4, 7, 10][group.length] ?? 10)),
  ];
}

/** Two characters in eleven bits, one in six. */
function alphanumericBits(text: string): number[] {
  const groups = text.match(/.{1,2}/g) ?? [];
  return [
    ...bits(0b0010, 4),
    ...bits(text.length, 9),
    ...groups.flatMap((group) => {
      const [first = 0, second] = [...group].map((letter) => alphanumeric.indexOf(letter));
      return second === undefined ? bits(first, 6) : bits(first * 45 + second, 11);
    }),
  ];
}

function byteBits(text: string): number[] {
  const letters = [...text].map((letter) => letter.charCodeAt(0));
  return [...bits(0b0100, 4), ...bits(text.length, 8), ...letters.flatMap((letter) => bits(letter, 8))];
}

function segment(text: string): number[] {
  if (/^\d+$/.test(text)) return numericBits(text);
  if ([...text].every((letter) => alphanumeric.includes(letter))) return alphanumericBits(text);
  return byteBits(text);
}

/** The words of a text for the smallest version that takes it, padded; null when none of the five does. */
export function qrDataCodewords(text: string): { readonly version: QrVersion; readonly data: number[] } | null {
  const content = segment(text);
  const version = qrVersions.find(({ blocks, dataEach }) => content.length <= blocks * dataEach * 8);
  if (version === undefined) return null;
  const room = version.blocks * version.dataEach;
  const padded = [...content, ...new Array<number>(Math.min(4, room * 8 - content.length)).fill(0)];
  while (padded.length % 8 !== 0) padded.push(0);
  const data = Array.from({ length: padded.length / 8 }, (_, place) =>
    padded.slice(place * 8, place * 8 + 8).reduce((byte, bit) => byte * 2 + bit, 0),
  );
  for (let pad = 0xec; data.length < room; pad ^= 0xec ^ 0x11) data.push(pad);
  return { version, data };
}

/** Column by column over the blocks: the first word of each, the second of each, and so on. */
function interleaved(blocks: readonly (readonly number[])[]): number[] {
  return (blocks[0] ?? []).flatMap((_, place) => blocks.map((block) => block[place] ?? 0));
}

/** Everything that is drawn, in the order of drawing: data, error correction, remainder. */
export function qrBits(data: readonly number[], version: QrVersion): number[] {
  const blocks = Array.from({ length: version.blocks }, (_, place) =>
    data.slice(place * version.dataEach, (place + 1) * version.dataEach),
  );
  const correction = blocks.map((block) => errorCorrection(block, version.correctionEach));
  return [
    ...[...interleaved(blocks), ...interleaved(correction)].flatMap((codeword) => bits(codeword, 8)),
    ...new Array<number>(version.remainderBits).fill(0),
  ];
}
