import { phrase } from '#core/words/phrase.ts';

/** A file's text, or why it has none. */
export type FileText =
  | { readonly kind: 'text'; readonly text: string; readonly encoding: string }
  | { readonly kind: 'fault'; readonly why: 'too-large' | 'no-text' | 'unreadable' };

const largest_bytes = 20_000_000;

/** Text of two bytes a letter without its mark: every second byte of plain letters and figures is zero, always on the same side. */
function unmarkedUtf16(bytes: Uint8Array): string | null {
  const zeros = [0, 0];
  for (let at = 0; at < bytes.length; at += 1) if (bytes[at] === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
  const [high = 0, low = 0] = zeros;
  if (bytes.length % 2 === 1 || Math.min(high, low) > 0 || Math.max(high, low) * 4 < bytes.length) return null;
  try {
    const text = new TextDecoder(low > 0 ? 'utf-16le' : 'utf-16be', { fatal: true }).decode(bytes);
    return /[^\P{Cc}\t\r\n]/u.test(text) ? null : text;
  } catch {
    return null;
  }
}

/** Bytes as text: by their mark, else UTF-8 where they are valid, else the Western code page that spreadsheets write. */
export function textOf(bytes: Uint8Array): { text: string; encoding: string } | null {
  const [first, second, third] = bytes;
  if (first === 0xff && second === 0xfe) return { text: new TextDecoder('utf-16le').decode(bytes), encoding: 'UTF-16' };
  if (first === 0xfe && second === 0xff) return { text: new TextDecoder('utf-16be').decode(bytes), encoding: 'UTF-16' };
  const hasMark = first === 0xef && second === 0xbb && third === 0xbf;
  if (bytes.includes(0)) {
    // No other table of words and figures holds a zero byte: this is a picture, a program or a spreadsheet's own file.
    const text = unmarkedUtf16(bytes);
    return text === null ? null : { text, encoding: 'UTF-16' };
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { text, encoding: hasMark ? 'UTF-8 with its mark' : 'UTF-8' };
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'Windows-1252' };
  }
}

/** Reads a chosen file as text, whatever encoding a spreadsheet gave it. */
export async function readTextFile(file: Blob): Promise<FileText> {
  if (file.size > largest_bytes) return { kind: 'fault', why: 'too-large' };
  try {
    const read = textOf(new Uint8Array(await file.arrayBuffer()));
    return read === null ? { kind: 'fault', why: 'no-text' } : { kind: 'text', ...read };
  } catch {
    return { kind: 'fault', why: 'unreadable' };
  }
}

/** What to say of a file that can't be taken as a table. */
export const fileFaultWords: Readonly<Record<'too-large' | 'no-text' | 'unreadable', string>> = {
  'too-large': phrase`This file is larger than 20 MB. Take it in by parts.`,
  'no-text': phrase`This file is no text: it may be a picture, a program, or a spreadsheet’s own format. Save the sheet as CSV first.`,
  unreadable: phrase`The file can’t be read.`,
};
