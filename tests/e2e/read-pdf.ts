import { inflateSync } from 'node:zlib';

// Reads the words of a PDF that Chromium printed, with nothing but zlib: enough of ISO 32000 for one writer's files. Fonts are embedded
// with a ToUnicode map; text stands in pages and in the forms that they draw.

interface PdfObject {
  readonly dictionary: string;
  readonly stream: Buffer | null;
}

export interface ReadPdf {
  /** The words of each page, in the order of painting. */
  readonly pages: readonly string[];
  /** Width and height of each page, mm, rounded to half ones. */
  readonly sizes_mm: readonly (readonly [number, number])[];
}

function objectsOf(file: Buffer): Map<number, PdfObject> {
  const text = file.toString('latin1');
  const objects = new Map<number, PdfObject>();
  for (const match of text.matchAll(/(?:^|\n)(\d+) 0 obj\s/g)) {
    const start = match.index + match[0].length;
    const end = text.indexOf('endobj', start);
    const streamAt = text.indexOf('stream', start);
    if (streamAt === -1 || streamAt > end) {
      objects.set(Number(match[1]), { dictionary: text.slice(start, end), stream: null });
      continue;
    }
    const dictionary = text.slice(start, streamAt);
    const from = streamAt + 'stream'.length + (text[streamAt + 6] === '\r' ? 2 : 1);
    const stated = /\/Length (\d+)(?! 0 R)/.exec(dictionary)?.[1];
    const length = stated === undefined ? text.indexOf('endstream', from) - from : Number(stated);
    const raw = file.subarray(from, from + length);
    objects.set(Number(match[1]), { dictionary, stream: dictionary.includes('/FlateDecode') ? inflateSync(raw) : raw });
  }
  return objects;
}

/** What a font's glyphs read as. Those of variable fonts are drawn as they are used, and counted in one byte. */
interface Glyphs {
  readonly bytes: 1 | 2;
  readonly readAs: ReadonlyMap<number, string>;
}

function textOf(hex: string): string {
  return Buffer.from(hex, 'hex').swap16().toString('utf16le');
}

/** A ToUnicode map (bfchar and bfrange). */
function glyphsOf(map: string): Glyphs {
  const glyphs = new Map<number, string>();
  for (const [, block] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, glyph, to] of (block ?? '').matchAll(/<(\w+)>\s*<(\w+)>/g)) {
      glyphs.set(Number.parseInt(glyph ?? '', 16), textOf(to ?? ''));
    }
  }
  for (const [, block] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, low, high, to] of (block ?? '').matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g)) {
      const first = Number.parseInt(low ?? '', 16);
      for (let glyph = first; glyph <= Number.parseInt(high ?? '', 16); glyph += 1) {
        const unit = Number.parseInt((to ?? '').slice(-4), 16) + glyph - first;
        glyphs.set(glyph, textOf((to ?? '').slice(0, -4)) + String.fromCharCode(unit));
      }
    }
  }
  return { bytes: /begincodespacerange\s*<00>/.test(map) ? 1 : 2, readAs: glyphs };
}

/** The bytes of a string in round brackets or angles. */
function bytesOf(written: string): Buffer {
  if (written.startsWith('<')) return Buffer.from(written.slice(1, -1).replaceAll(/\s/g, ''), 'hex');
  const inner = written.slice(1, -1).replaceAll(/\\(\d{1,3}|\r?\n|.)/gs, (_, escaped: string) => {
    if (/^\d/.test(escaped)) return String.fromCharCode(Number.parseInt(escaped, 8) & 255);
    if (/^\r?\n$/.test(escaped)) return '';
    return { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' }[escaped] ?? escaped;
  });
  return Buffer.from(inner, 'latin1');
}

function referred(dictionary: string, key: string): number | null {
  const found = new RegExp(`/${key}\\s*\\[?\\s*(\\d+) 0 R`).exec(dictionary)?.[1];
  return found === undefined ? null : Number(found);
}

/** Reads the file. @throws Error when it holds no page */
export function readPdf(file: Buffer): ReadPdf {
  const objects = objectsOf(file);
  const fonts = new Map<string, Glyphs>();
  const forms = new Map<string, number>();
  for (const { dictionary } of objects.values()) {
    for (const [, name, object] of dictionary.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const map = referred(objects.get(Number(object))?.dictionary ?? '', 'ToUnicode');
      const stream = map === null ? null : objects.get(map)?.stream;
      if (name !== undefined && stream != null) fonts.set(name, glyphsOf(stream.toString('latin1')));
    }
    for (const [, name, object] of dictionary.matchAll(/\/(X\d+) (\d+) 0 R/g)) forms.set(name ?? '', Number(object));
  }

  function wordsOf(object: number): string {
    const content = objects.get(object)?.stream?.toString('latin1') ?? '';
    let font: Glyphs | undefined;
    let words = '';
    const token = /\/(F\d+) [\d.]+ Tf|\/(X\d+) Do|\bBT\b|\bT[dDm*]\b|(<[\da-fA-F\s]*>|\((?:\\.|[^\\()])*\))/gs;
    for (const [whole, named, form, written] of content.matchAll(token)) {
      if (named !== undefined) font = fonts.get(named);
      else if (form !== undefined) words += ` ${wordsOf(forms.get(form) ?? -1)} `;
      else if (written === undefined) words += whole === 'BT' ? '\n' : ' ';
      else if (font !== undefined) {
        const bytes = bytesOf(written);
        for (let at = 0; at + font.bytes <= bytes.length; at += font.bytes) {
          words += font.readAs.get(bytes.readUIntBE(at, font.bytes)) ?? '';
        }
      }
    }
    return words;
  }

  const pages = [...objects.values()].filter(({ dictionary }) => /\/Type\s*\/Page(?![a-z])/.test(dictionary));
  if (pages.length === 0) throw new Error('This PDF holds no page.');
  return {
    pages: pages.map(({ dictionary }) => wordsOf(referred(dictionary, 'Contents') ?? -1)),
    sizes_mm: pages.map(({ dictionary }) => {
      const [, width, height] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(dictionary) ?? [];
      const half = (points: string | undefined) => Math.round(((Number(points) * 25.4) / 72) * 2) / 2;
      return [half(width), half(height)] as const;
    }),
  };
}

/** Letters and figures alone: where lines break and words part is the paper's affair. */
export function squeezed(words: string): string {
  return words.normalize('NFKC').replaceAll(/\s+/g, '');
}
