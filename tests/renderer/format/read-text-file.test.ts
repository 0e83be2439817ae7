import { describe, expect, it } from 'vitest';
import { readTextFile, textOf } from '#renderer/format/read-text-file.ts';

const bytes = (...values: number[]) => new Uint8Array(values);

describe('textOf(bytes)', () => {
  it('reads UTF-8 with and without its mark, UTF-16 either way, and the Western code page', () => {
    expect(textOf(new TextEncoder().encode('süß;4,5'))).toEqual({ text: 'süß;4,5', encoding: 'UTF-8' });
    expect(textOf(bytes(0xef, 0xbb, 0xbf, 0x61))).toEqual({ text: 'a', encoding: 'UTF-8 with its mark' });
    expect(textOf(bytes(0xff, 0xfe, 0xfc, 0x00, 0x62, 0x00))?.text).toBe('üb');
    expect(textOf(bytes(0xfe, 0xff, 0x00, 0xfc, 0x00, 0x62))?.text).toBe('üb');
    expect(textOf(bytes(0x73, 0xfc, 0xdf, 0x80))).toEqual({ text: 'süß€', encoding: 'Windows-1252' });
  });

  it('knows two bytes a letter without their mark, either way round, by the zeros between the figures', () => {
    const table = 'jar;hours;note\nA;4,5;süß – „frisch“\n';
    const little = new Uint8Array(Buffer.from(table, 'utf16le'));
    expect(textOf(little)).toEqual({ text: table, encoding: 'UTF-16' });
    expect(textOf(new Uint8Array(Buffer.from(little).swap16()))).toEqual({ text: table, encoding: 'UTF-16' });
    expect(textOf(little.slice(0, -1))).toBeNull();
    expect(textOf(bytes(0x4d, 0x00, 0x5a, 0x00, 0x03, 0x00, 0x01, 0x00))).toBeNull();
  });

  it('takes no picture and no program for text', async () => {
    expect(textOf(bytes(0x4d, 0x5a, 0x90, 0x00, 0x03))).toBeNull();
    expect(await readTextFile(new Blob([bytes(0, 0, 0, 0x18, 0x66, 0x74, 0x79, 0x70)]))).toEqual({
      kind: 'fault',
      why: 'no-text',
    });
    expect(await readTextFile(new Blob(['x'.repeat(20_000_001)]))).toEqual({ kind: 'fault', why: 'too-large' });
    expect(await readTextFile(new Blob(['jar,hours']))).toMatchObject({ kind: 'text', text: 'jar,hours' });
  });
});
