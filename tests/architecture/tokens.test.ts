import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const tokens = 'renderer/app/tokens.css';

/** A colour by itself: hex, a colour function, or the names that come to mind first. */
const rawColour =
  /#[\da-f]{3,8}\b|\b(?:rgb|hsl|hwb|lab|lch|oklab|oklch)a?\(|(?<=:[^;]*)\b(?:white|black|red|green|blue|gray|grey|silver)\b(?=[^;{]*;)/i;
/** A size of type that neither comes from a token nor grows with what it stands in. */
const rawSize = /^\s*(?:font|font-size):(?=[^;]*?[\d.](?:px|rem|pt|mm|ch)\b)/;
const rawFont =
  /^\s*(?:font|font-family):(?!\s*(?:inherit|var\())(?=[^;]*(?:["']|\b(?:serif|sans-serif|monospace|system-ui)\b))/;

/** What it finds is said with the place and the way out. */
function offences(css: string): string[] {
  const lines = css.replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ' ')).split('\n');
  return lines.flatMap((line, at) =>
    [rawColour.test(line) && 'colour', rawSize.test(line) && 'size of type', rawFont.test(line) && 'font'].flatMap(
      (what) => (what === false ? [] : [`${at + 1}: ${line.trim()} (a ${what} of its own)`]),
    ),
  );
}

const files = (pattern: string) =>
  globSync(pattern, { cwd: root })
    .map((file) => file.replaceAll('\\', '/'))
    .sort();

describe('design tokens', () => {
  it('finds a raw colour, size and font, and lets tokens and growing sizes be', () => {
    expect(offences('a { color: #fff; }\n  font-size: 12px;\n  font: 600 0.8rem Arial, sans-serif;')).toHaveLength(4);
    expect(offences('  background: rgb(0 0 0 / 20%);\n  border: 1px solid black;')).toHaveLength(2);
    expect(
      offences('  color: var(--ink);\n  font-size: 1.2em;\n  font: 560 var(--text-title) / 1.1 var(--font-display);'),
    ).toEqual([]);
    expect(offences('/* #fff */\n  font: inherit;\n  font-size: calc(min(9cqh, 5cqw) * var(--fit, 1));')).toEqual([]);
  });

  it('stand in one file: no other style sheet names a colour, a size of type or a font', () => {
    const sheets = files('renderer/**/*.css').filter((file) => file !== tokens);
    expect(sheets.length).toBeGreaterThan(50);
    const found = sheets.flatMap((file) =>
      offences(readFileSync(join(root, file), 'utf8')).map((offence) => `${file}:${offence}`),
    );
    expect(found, 'Give it a name in renderer/app/tokens.css').toEqual([]);
  });

  it('give the window the colour that it has before its page is read', () => {
    const linen = /--linen: light-dark\((#\w+), (#\w+)\)/.exec(readFileSync(join(root, tokens), 'utf8'));
    expect(readFileSync(join(root, 'electron/shell/kitchen-window.ts'), 'utf8')).toContain(
      `? '${linen?.[2]}' : '${linen?.[1]}'`,
    );
  });

  it('are used by drawings in code too; only what fruit looks like is a table of its own', () => {
    const own = ['renderer/parts/shelf/fruit-colour.ts'];
    const found = files('renderer/**/*.{ts,tsx}')
      .filter((file) => !own.includes(file))
      .flatMap((file) =>
        [...readFileSync(join(root, file), 'utf8').matchAll(/['"`](?:#[\da-f]{3,8}|rgba?\([^'"`]*)['"`]/gi)].map(
          ([colour]) => `${file}: ${colour}`,
        ),
      );
    expect(found).toEqual([]);
  });
});
