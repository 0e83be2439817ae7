import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Page } from '@playwright/test';
import Database from 'better-sqlite3';
import type { Catalogue } from '#scripts/words/catalogue.ts';
import { pseudoLanguage } from '#scripts/words/pseudo-language.ts';
import { everyScreen, goTo } from './every-screen.ts';
import { sidewaysScroll } from './looked-over.ts';
import { expect, test, type Workbench } from './workbench.ts';

const catalogue = JSON.parse(
  readFileSync(join(import.meta.dirname, '..', '..', 'words', 'en.json'), 'utf8'),
) as Catalogue;

/** A language that browsers say days in and whose words are not English ones. */
const language = 'fi';

/** English words that the catalogue says somewhere. */
const vocabulary = new Set(
  Object.keys(catalogue).flatMap((key) => key.toLowerCase().match(/(?<!\p{L})\p{L}{3,}(?!\p{L})/gu) ?? []),
);

/** Not words to translate: units, signs that are typed, names of files and keys. */
const signs = new Set(
  'brix bar psi oz gal lb qt cup cups tsp tbsp mL vol csv json tsv svg png ics html ctrl cmd alt shift enter esc tab sidejar min iso'.split(
    ' ',
  ),
);

/** What people wrote, and what came with the sample: every text of the kitchen. */
function textsOfKitchen(store: string): string[] {
  const db = new Database(store, { readonly: true });
  const tables = db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all() as string[];
  const texts = new Set<string>();
  const take = (value: unknown): void => {
    if (typeof value === 'string') {
      texts.add(value);
      if (/^[[{]/.test(value)) {
        try {
          take(JSON.parse(value));
        } catch {
          // A text that only looks like JSON.
        }
      }
    } else if (Array.isArray(value)) value.forEach(take);
    else if (typeof value === 'object' && value !== null) Object.entries(value).forEach(take);
  };
  for (const table of tables) for (const row of db.prepare(`SELECT * FROM "${table}"`).all()) take(row);
  db.close();
  return [...texts];
}

/** People's own words, and the names, kinds and sources of the ingredients, which stay as their tables have them. */
async function ownTexts({ store, ask }: Workbench): Promise<string[]> {
  const { ingredients } = await ask('pantry:list', {});
  const named = JSON.stringify(ingredients).match(/"(?:[^"\\\\]|\\\\.)*"/g) ?? [];
  const all = [
    ...textsOfKitchen(store),
    ...named.map((text) => JSON.parse(text) as string),
    store,
    join(dirname(store), 'backups'),
    dirname(store),
    'English',
    'USDA',
  ];
  return [...new Set(all.map((text) => text.toLowerCase()))]
    .filter((text) => text.length >= 3)
    .sort((a, b) => b.length - a.length);
}

/** Every text that is seen or read out, piece by piece as it stands; not the packages that the program is made of. */
async function textsOn(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const holder = walker.currentNode.parentElement;
      if (holder?.closest('style, script, noscript, textarea, .made-of, .subsection:has(> .made-of)') === null)
        texts.push(walker.currentNode.textContent ?? '');
    }
    for (const element of document.querySelectorAll('[aria-label], [title], [placeholder], img[alt]')) {
      for (const name of ['aria-label', 'title', 'placeholder', 'alt']) texts.push(element.getAttribute(name) ?? '');
    }
    return texts.filter((text) => /\p{L}{3}/u.test(text));
  });
}

/** The English words of a text that stand outside the brackets and are nobody's own. */
function plainEnglish(text: string, own: readonly string[]): string[] {
  let rest = text.replace(/⟦[^⟦⟧]*⟧/g, ' ');
  rest = rest.toLowerCase();
  for (const one of own) if (rest.includes(one)) rest = rest.replaceAll(one, ' ');
  return (rest.match(/(?<!\p{L})\p{L}{3,}(?!\p{L})/gu) ?? []).filter(
    (word) => vocabulary.has(word) && !signs.has(word),
  );
}

async function openInPseudoLanguage({ page, ownWords, open }: Workbench): Promise<void> {
  mkdirSync(ownWords, { recursive: true });
  writeFileSync(join(ownWords, `${language}.json`), JSON.stringify(pseudoLanguage(catalogue)));
  await page.addInitScript((chosen) => {
    if (location.protocol === 'http:') {
      localStorage.setItem('sidejar.window', JSON.stringify({ language: chosen, decimal: ',' }));
    }
  }, language);
  await open('/');
}

const shares = 2;

for (let share = 0; share < shares; share += 1) {
  test(`every screen speaks another language in whole, and its longer words fit: part ${share + 1} of ${shares}`, async ({
    sample,
  }) => {
    test.setTimeout(300_000);
    const { page } = sample;
    const screens = (await everyScreen(sample)).filter((_, place) => place % shares === share);
    const own = await ownTexts(sample);
    await openInPseudoLanguage(sample);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe(language);
    const wrong: string[] = [];
    for (const screen of screens) {
      await page.setViewportSize({ width: 1280, height: 860 });
      await goTo(page, screen);
      await page.waitForTimeout(300);
      for (const text of await textsOn(page)) {
        const english = plainEnglish(text, own);
        if (english.length > 0) wrong.push(`${screen}: “${text.trim().slice(0, 160)}” says ${english.join(', ')}`);
      }
      const over = await sidewaysScroll(page, 390);
      if (over > 0) wrong.push(`${screen}: scrolls ${over} px sideways at 390 px`);
    }
    expect([...new Set(wrong)]).toEqual([]);
  });
}
