import { expect, type Page } from '@playwright/test';
import type { Workbench } from './workbench.ts';

/** Points to a millimetre of a PDF. */
const points = 72 / 25.4;

export interface PrintedPages {
  readonly pages: number;
  /** Width and height of each page, mm, rounded to half ones. */
  readonly sizes_mm: readonly (readonly [number, number])[];
}

/** Prints as the print window does with the page's own paper, and counts the pages with their sizes. */
export async function printed(page: Page): Promise<PrintedPages> {
  const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString('latin1');
  const sizes = [...pdf.matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)].map(
    ([, width, height]) =>
      [Math.round((Number(width) / points) * 2) / 2, Math.round((Number(height) / points) * 2) / 2] as const,
  );
  return { pages: pdf.match(/\/Type\s*\/Page(?![a-z])/g)?.length ?? 0, sizes_mm: sizes };
}

/** What can be read on paper: the rest of the page is hidden there. */
export async function readOnPaper(page: Page): Promise<string> {
  await page.emulateMedia({ media: 'print' });
  // biome-ignore lint/performance/useDomNodeTextContent: only innerText leaves out what is not shown
  const words = await page.locator('body').innerText();
  await page.emulateMedia({ media: null });
  // A space that keeps figure and unit together is read as any other.
  return words.replaceAll('\u00a0', ' ');
}

/** Nothing of a sheet is cut off: every box that hides what runs over has nothing to hide. */
export async function expectNothingCutOff(page: Page, selector: string): Promise<void> {
  const over = await page
    .locator(selector)
    .evaluateAll((boxes) =>
      boxes
        .filter((box) => box.scrollHeight > box.clientHeight + 1 || box.scrollWidth > box.clientWidth + 1)
        .map((box) => box.textContent),
    );
  expect(over).toEqual([]);
}

export interface SixLevels {
  readonly trial: string;
  readonly jars: readonly { readonly id: string; readonly label: string }[];
  readonly tasters: readonly string[];
}

/** A trial of six levels on fixed days, under lids; nothing is started. */
export async function sixLevels({ ask }: Workbench): Promise<SixLevels> {
  const { trial } = await ask('trials:save', {
    question: 'How many days should raspberry and vanilla stand before it turns?',
    factor: 'days',
    levels: [1, 2, 3, 4, 5, 6].map((value) => ({ name: value === 1 ? '1 day' : `${value} days`, value })),
    control: '2 days',
    held: {
      additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }],
      cover: 'lid',
      temperature_C: 22,
      stirring: 'daily',
    },
    calendar: 'staggered-pull',
    baseAvailable_mL: 6000,
    baseEach_mL: 800,
    vessel: { kind: 'swing-top', capacity_mL: 1000 },
    start: '2026-03-02T09:00:00Z',
    seed: 7,
  });
  const { jarsWhole } = await ask('trials:open', { trial });
  const tasters: string[] = [];
  for (const name of ['Ana', 'Ben', 'Cleo', 'Dora', 'Emil', 'Fay']) {
    tasters.push((await ask('tasters:save', { name })).taster);
  }
  return { trial, jars: jarsWhole.map(({ id, label }) => ({ id, label })), tasters };
}

/** The same with its jars started and pulled. */
export async function sixPulled(workbench: Workbench): Promise<SixLevels> {
  const six = await sixLevels(workbench);
  const jars = six.jars.map(({ id }) => id);
  await workbench.ask('jars:start', { jars, at: '2026-03-02T09:00:00Z' });
  await workbench.ask('jars:pull', { jars, at: '2026-03-08T09:00:00Z' });
  return six;
}

/** Tastes the jars on the six usual attributes and closes; liking is highest on the third day. */
export async function tasteSix({ ask }: Workbench, { trial, jars, tasters }: SixLevels): Promise<void> {
  const ids = jars.map(({ id }) => id);
  const { tasting, codes } = await ask('tastings:build', {
    trial,
    name: 'Sunday',
    samples: ids.map((jar) => ({ jar })),
    tasters: [...tasters],
  });
  const { attributes } = await ask('tastings:open', { tasting });
  const scores = tasters.flatMap((taster, t) =>
    ids.flatMap((id, j) =>
      attributes.map(({ name, low, high }, a) => {
        const middle = name === 'liking' ? 8 - Math.abs(j - 2) * 1.2 : a % 2 === 0 ? 2 + j : 8 - j;
        const score = Math.min(high, Math.max(low, middle + (((t * 3 + j * 2 + a) % 5) - 2) * 0.5));
        return { taster, sample: codes[id] ?? '', attribute: name, score };
      }),
    ),
  );
  await ask('scores:enter', { tasting, scores });
  await ask('tastings:close', { tasting });
}

/** The sample's trial of days, which was tasted and closed. */
export async function daysTrial({ ask }: Workbench): Promise<string> {
  const { trials } = await ask('trials:list', {});
  return trials.find(({ question }) => question.includes('pear and ginger'))?.id ?? '';
}

/** The sample's tasting that is still open. */
export async function openTasting({ ask }: Workbench): Promise<string> {
  const { tastings } = await ask('tastings:list', {});
  return tastings.find(({ closedAt }) => closedAt === null)?.id ?? '';
}
