import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const text = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
const section = text.slice(text.indexOf('## Electron’s security checklist'.replace('’', "'")));
const rows = [...section.matchAll(/^\| (\d+) +\|([^|]+)\|([^|]+)\|([^|]+)\|$/gm)];

it('the security checklist has its twenty points, and every file that it names is there', () => {
  expect(rows.map(([, number]) => Number(number))).toEqual(Array.from({ length: 20 }, (_, at) => at + 1));
  const named = [...section.matchAll(/`((?:electron|scripts|tests)[\w./-]*\.\w+)`/g)].map(([, file]) => file ?? '');
  expect(named.length).toBeGreaterThan(30);
  expect(named.filter((file) => !existsSync(join(root, file)))).toEqual([]);
});

it('the page’s preferences and the fuses are what the checklist says', () => {
  const main = readFileSync(join(root, 'electron', 'main.ts'), 'utf8');
  for (const line of [
    'app.enableSandbox()',
    'guardContents(app)',
    'refuseCertificates(app)',
    'refusePermissions(session.defaultSession)',
    'refuseNetwork(session.defaultSession.webRequest)',
    'servePage(session.defaultSession.protocol, files.page)',
  ]) {
    expect(main).toContain(line);
  }
  // The window opens last, when every guard stands.
  expect(main.indexOf('open(store);\n    })')).toBeGreaterThan(main.indexOf('servePage('));
});
