import { mkdirSync, realpathSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve, sep } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pageFile, presentPageFile } from '#hosts/page-files.ts';
import { fc } from '#tests/properties.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const root = resolve('/opt/page');

describe('pageFile', () => {
  test('finds the start page under /, and under its own name', () => {
    const start = { path: resolve(root, 'index.html'), type: 'text/html; charset=utf-8' };
    expect(pageFile(root, '/')).toEqual(start);
    expect(pageFile(root, '/index.html')).toEqual(start);
  });

  // Types: WHATWG MIME Sniffing (JavaScript is text/javascript) and RFC 8081 (font/woff2).
  test.each([
    ['/assets/page-a1.js', 'text/javascript; charset=utf-8'],
    ['/assets/page.css', 'text/css; charset=utf-8'],
    ['/assets/jar.SVG', 'image/svg+xml'],
    ['/assets/letters.woff2', 'font/woff2'],
  ])('%s is %s', (address, type) => {
    expect(pageFile(root, address)).toEqual({ path: resolve(root, address.slice(1)), type });
  });

  test('decodes a name once', () => {
    expect(pageFile(root, '/two%20words.css')?.path).toBe(resolve(root, 'two words.css'));
    expect(pageFile(root, '/%252e%252e.css')?.path).toBe(resolve(root, '%2e%2e.css'));
  });

  test.each([
    ['/../secret.json', 'a step upwards'],
    ['/assets/../../secret.json', 'a step upwards further in'],
    ['/%2e%2e/secret.json', 'an encoded step'],
    ['/..%2fsecret.json', 'an encoded slash'],
    ['/..%5csecret.json', 'an encoded backslash'],
    ['/..\\secret.json', 'a backslash'],
    ['/c:/secret.json', 'a drive'],
    ['//host/secret.json', 'an empty part'],
    ['/assets//page.js', 'an empty part further in'],
    ['/.env', 'a hidden file'],
    ['/.git/config.json', 'a hidden folder'],
    ['/page.js%00.html', 'a NUL'],
    ['/page%0a.html', 'a line break'],
    ['/%', 'an escape that is none'],
    ['/%ff.html', 'bytes that are no UTF-8'],
    ['secret.json', 'a path without its slash'],
    ['', 'nothing'],
    ['/kitchen.sidejar', 'a kind of file no build makes'],
    ['/run.exe', 'a program'],
    ['/index.html?x', 'a query'],
    ['/../trials', 'a step upwards without an extension'],
    ['/assets', 'a folder'],
  ])('%s is refused: %s', (address) => {
    expect(pageFile(root, address)).toBeNull();
  });

  test('never leads out of the page’s folder, whatever the address', () => {
    const piece = fc.constantFrom(
      '..',
      '.',
      '%2e',
      '%2E%2e',
      '/',
      '%2f',
      '\\',
      '%5c',
      '%00',
      'a',
      'page.js',
      '.html',
      ':',
      '%25',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 10 }), (pieces) => {
        const found = pageFile(root, `/${pieces.join('')}`);
        return (
          found === null || (found.path.startsWith(root + sep) && !found.path.slice(root.length).includes(`${sep}.`))
        );
      }),
      { numRuns: 3000 },
    );
  });
});

describe('presentPageFile', () => {
  test('finds a file that is there; neither a folder nor a link that leads out', () => {
    const folder = temporaryFolder();
    const page = join(folder, 'page');
    mkdirSync(join(page, 'folder.js'), { recursive: true });
    writeFileSync(join(page, 'index.html'), '');
    writeFileSync(join(folder, 'secret.txt'), '');
    symlinkSync(join(folder, 'secret.txt'), join(page, 'link.txt'));
    symlinkSync(join(page, 'index.html'), join(page, 'again.html'));
    expect(presentPageFile(page, '/')?.type).toBe('text/html; charset=utf-8');
    expect(presentPageFile(page, '/again.html')?.path).toBe(realpathSync(join(page, 'index.html')));
    for (const address of ['/folder.js', '/link.txt', '/none.js']) expect(presentPageFile(page, address)).toBeNull();
  });
});
