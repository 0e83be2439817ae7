import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { termsIn } from '#renderer/parts/term/find-terms.ts';
import { type TermName, termWords } from '#renderer/parts/term/term-words.ts';
import { everyScreen, goTo } from './every-screen.ts';
import { sidewaysScroll } from './looked-over.ts';
import { expect, test, type Workbench } from './workbench.ts';

const catalogue = JSON.parse(readFileSync(join(import.meta.dirname, '..', '..', 'words', 'en.json'), 'utf8')) as object;

/** Where a screen says its words large: headings, leads and the names of fields, as they are seen. */
const speaking = 'h1, h2, h3, h4, .page-head-lead, main label, main legend, main h2 + p, main h3 + p, .empty-words p';

/** The terms that this screen says in such places, in the program's own words: what people wrote is theirs. */
async function termsOf(page: Page): Promise<TermName[]> {
  const texts = await page.evaluate((selector) => {
    const seen = [...document.querySelectorAll(`:is(${selector}):not(dialog *, .unseen, .paper *)`)];
    return seen.filter((one) => one.checkVisibility()).map((one) => one.textContent.replaceAll('\u00a0', ' ').trim());
  }, speaking);
  return [...new Set(texts.filter((text) => text in catalogue).flatMap(termsIn))];
}

/** What the tip says now; null where none is open. */
async function tipText(page: Page): Promise<string | null> {
  const tip = page.getByRole('tooltip');
  return (await tip.count()) === 0 ? null : (await tip.locator('p').allInnerTexts()).join('\n');
}

/** Whether the open tip stands whole within the window, each of its lines on one line where the window is wide. */
async function tipFits(page: Page, isWide: boolean): Promise<boolean> {
  return page.evaluate((wide) => {
    const tip = document.querySelector('.term-tip');
    if (tip === null) return false;
    const { left, right, top, bottom } = tip.getBoundingClientRect();
    const { clientWidth, clientHeight } = document.documentElement;
    const isWhole = left >= 0 && top >= 0 && right <= clientWidth && bottom <= clientHeight;
    const line = Number.parseFloat(getComputedStyle(tip).lineHeight);
    return isWhole && (!wide || [...tip.querySelectorAll('p')].every((one) => one.clientHeight < line * 1.5));
  }, isWide);
}

interface Told {
  readonly names: TermName[];
  readonly wrong: string[];
}

/** Goes by Tab to the first dotted word and by the arrows to all others. */
async function byArrows(page: Page, isWide: boolean): Promise<Told> {
  const names: TermName[] = [];
  const wrong: string[] = [];
  const words = await page.locator('main dfn[data-tells]').count();
  const stops = await page.locator('main dfn[tabindex="0"]').count();
  if (stops !== Math.min(1, words)) wrong.push(`${stops} of ${words} words are stops of Tab`);
  if (words === 0) return { names, wrong };
  // From the last thing before the first word that takes the focus, Tab comes to it.
  await page.locator('main dfn[tabindex="0"]').evaluate((stop) => {
    const all = [
      ...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary, [tabindex]'),
    ];
    const before = all.filter(
      (one) =>
        one.tabIndex >= 0 &&
        one.checkVisibility() &&
        one.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_FOLLOWING &&
        !one.matches(':disabled'),
    );
    before.at(-1)?.focus();
  });
  // A field for a date has several stops of its own.
  for (let press = 0; press < 9; press += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement?.matches('dfn'))) break;
  }
  await page.keyboard.press('Home');
  for (let word = 0; word < words; word += 1) {
    const name = await page.evaluate(() => (document.activeElement as HTMLElement).dataset.tells ?? null);
    const said = await tipText(page);
    if (name === null || said !== termWords[name as TermName].meaning) wrong.push(`focus on ${name}: says ${said}`);
    else names.push(name as TermName);
    if (!(await tipFits(page, isWide))) wrong.push(`the tip of ${name} is cut off or breaks its line`);
    if (word === 0) {
      await page.keyboard.press('Escape');
      if ((await tipText(page)) !== null) wrong.push(`Escape leaves the tip of ${name} open`);
    }
    await page.keyboard.press('ArrowRight');
  }
  return { names, wrong };
}

/** Focuses each field, link and summary that has something to tell. */
async function byFields(page: Page, isWide: boolean): Promise<Told> {
  const names: TermName[] = [];
  const wrong: string[] = [];
  for (const place of await page.locator('main [data-tells]:not(dfn)').all()) {
    const tells = (await place.getAttribute('data-tells'))?.split(' ') as TermName[];
    const described = await place.evaluate((element) => {
      const control = element instanceof HTMLLabelElement ? element.control : (element as HTMLElement);
      (document.activeElement as HTMLElement | null)?.blur();
      control?.focus();
      const ids = control?.getAttribute('aria-describedby')?.split(' ') ?? [];
      return ids.map((id) => document.getElementById(id)?.textContent ?? '').join(' ');
    });
    await expect(page.getByRole('tooltip'), `focus on ${tells}`).toBeVisible();
    const said = (await tipText(page)) ?? '';
    for (const name of tells) {
      const { meaning } = termWords[name];
      if (said.includes(meaning) && described.includes(meaning)) names.push(name);
      else wrong.push(`the field of ${name} says “${said}” and is described by “${described}”`);
    }
    if (!(await tipFits(page, isWide))) wrong.push(`the tip of the field of ${tells} is cut off or breaks its line`);
  }
  return { names, wrong };
}

/** Lays the pointer on each word and each label. */
async function byPointer(page: Page): Promise<Told> {
  const names: TermName[] = [];
  const wrong: string[] = [];
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  for (const place of await page.locator('main [data-tells]').all()) {
    await page.mouse.move(1, 1);
    const says = (await place.getAttribute('data-says'))?.split(' ') as TermName[];
    const meanings = says.map((name) => termWords[name].meaning);
    await place.hover({ force: true });
    const text = says.length === 1 ? meanings[0] : meanings.at(-1);
    try {
      await expect(page.getByRole('tooltip').filter({ hasText: text ?? '' })).toBeVisible({ timeout: 3000 });
      names.push(...says);
    } catch {
      wrong.push(`the pointer on ${says.join(', ')}: says ${await tipText(page)}`);
    }
    await page.keyboard.press('Escape');
    if ((await tipText(page)) !== null) wrong.push(`Escape leaves the tip of ${says.join(', ')} open`);
  }
  return { names, wrong };
}

async function openAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const folded of document.querySelectorAll<HTMLDetailsElement>('main details')) {
      if (document.querySelectorAll('main details').length < 60) folded.open = true;
    }
  });
  await page.waitForTimeout(250);
}

/** All that a screen leaves unexplained, and all tips that do not behave. */
async function wrongOn({ page }: Workbench, screens: readonly string[]): Promise<string[]> {
  const wrong: string[] = [];
  for (const screen of screens) {
    await page.setViewportSize({ width: 1280, height: 860 });
    await goTo(page, screen);
    await openAll(page);
    const said = await termsOf(page);
    const pointer = await byPointer(page);
    const arrows = await byArrows(page, true);
    const fields = await byFields(page, true);
    const keys = new Set([...arrows.names, ...fields.names]);
    for (const name of said) {
      if (!keys.has(name)) wrong.push(`${screen}: ${name} is not told on focus`);
      if (!pointer.names.includes(name)) wrong.push(`${screen}: ${name} is not told on hover`);
    }
    const over = await sidewaysScroll(page, 320);
    const narrow = [await byArrows(page, false), await byFields(page, false)];
    if ((await sidewaysScroll(page, 320)) > 0 || over > 0) wrong.push(`${screen}: scrolls sideways at 320 px`);
    for (const told of [pointer, arrows, fields, ...narrow]) {
      wrong.push(...told.wrong.map((what) => `${screen}: ${what}`));
    }
  }
  return wrong;
}

const shares = 4;

for (let share = 0; share < shares; share += 1) {
  test(`every word of the trade is explained on hover and on focus: part ${share + 1} of ${shares}`, async ({
    sample,
  }) => {
    test.setTimeout(420_000);
    await sample.open('/');
    const screens = (await everyScreen(sample, 1)).filter((_, place) => place % shares === share);
    expect(screens.length).toBeGreaterThan(5);
    expect(await wrongOn(sample, screens)).toEqual([]);
  });
}

test('every word of the trade is explained in an empty kitchen too', async ({ workbench }) => {
  test.setTimeout(240_000);
  await workbench.open('/');
  const screens = (await everyScreen(workbench)).filter((screen) => screen !== '/trials/new');
  expect(await wrongOn(workbench, screens)).toEqual([]);
});

test('a tip stays while the pointer is on it, goes when it leaves, and Escape leaves a sheet open', async ({
  workbench,
}) => {
  await workbench.open('/bases');
  const { page } = workbench;
  const tip = page.getByRole('tooltip');
  await page.getByRole('button', { name: 'Add a culture' }).click();
  const sheet = page.getByRole('dialog');
  await sheet.locator('h2 dfn').hover();
  await expect(tip).toHaveText(termWords.culture.meaning);
  await tip.hover();
  await page.waitForTimeout(600);
  await expect(tip).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(tip).toBeHidden();
  await expect(sheet).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(sheet).toBeHidden();
  await page.getByRole('button', { name: 'Start a base' }).first().click();
  await sheet.getByLabel('Culture').focus();
  await expect(tip).toHaveText(termWords.culture.meaning);
  await expect(sheet.getByLabel('Culture')).toHaveAccessibleDescription(termWords.culture.meaning);
  await page.keyboard.press('Escape');
  await expect(tip).toBeHidden();
  await page.keyboard.press('Escape');
  await expect(sheet).toBeHidden();
  await page.locator('.page-head-lead dfn').first().hover();
  await expect(tip).toBeVisible();
  await page.mouse.move(2, 2);
  await expect(tip).toBeHidden();
});
