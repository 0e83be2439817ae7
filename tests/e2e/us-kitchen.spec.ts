import { everyScreen, goTo } from './every-screen.ts';
import { expect, test } from './workbench.ts';

const metric = /\d ?(mL|L|g|kg|°C|g\/L|bar|mm|cm)(?![\p{L}/])/u;
const inBoth = /\d[\d.,]* (mL|L|bar|°C|g\/L|g|kg|mm) \([^)]*(qt|cups?|tbsp|tsp|psi|°F|oz\/gal|oz|lb|in)\b[^)]*\)/g;

/** Where sugar is counted by the food table, and scales have their steps. */
const foodTables = /^\/(pantry|house-recipes\/[^/]+)$/;
/** What stays in grams in every kitchen: food tables and the sugar of a serving go by them, and a scale’s own steps. */
const inGramsEverywhere = [
  /what 100 g of it holds/,
  // The sample’s levels are named by their weight, and a name is not rewritten.
  /\b(40|80|120) g\b/,
  // What a field also takes.
  /“800 mL” will do too/,
  /^75 g, 1\/2 cup, a handful$/,
  // How the decimal mark looks, on Data.
  /^a (point: 2\.5|comma: 2,5) g$/,
];

test('no screen of a US kitchen speaks in metric measures alone', async ({ sample }) => {
  test.setTimeout(240_000);
  const { page } = sample;
  await sample.ask('kitchen:change', { measures: 'us' });
  await sample.open('/');
  const strays: string[] = [];
  let usual = 0;
  for (const screen of await everyScreen(sample)) {
    await goTo(page, screen);
    // As laid out: words of neighbouring cells must not run into each other.
    // biome-ignore lint/performance/useDomNodeTextContent: the lines matter here
    const lines = (await page.locator('body').innerText()).replaceAll('\u00a0', ' ').split('\n');
    usual += lines.filter((line) => /\d (qt|cups?|tbsp|tsp|oz|°F|oz\/gal|psi)\b/.test(line)).length;
    for (const line of lines) {
      const isStray =
        metric.test(line.replaceAll(inBoth, '')) &&
        !inGramsEverywhere.some((kind) => kind.test(line)) &&
        !(foodTables.test(screen) && /^[\d.]+ g( sugars)?$/.test(line));
      if (isStray) strays.push(`${screen}: ${line}`);
    }
  }
  expect(strays).toEqual([]);
  expect(usual).toBeGreaterThan(30);
});

test('a US kitchen asks about closing in its own measures, and about sweetness by any instrument', async ({
  workbench,
}) => {
  const { page } = workbench;
  await workbench.ask('kitchen:change', { measures: 'us' });
  const start = new Date(Date.now() - 80 * 3_600_000).toISOString();
  const { base } = await workbench.ask('bases:start', {
    name: 'Saturday',
    volume_mL: 4000,
    sugarStart_g_per_L: 60,
    sugarNow_g_per_L: 40,
  });
  const { jars } = await workbench.ask('trials:save', {
    question: 'How many days?',
    factor: 'days',
    levels: [
      { name: 'two', value: 2 },
      { name: 'three', value: 3 },
    ],
    control: 'two',
    base,
    held: { additions: [{ ingredient: 'raspberries', mass_g: 90, state: 'fresh' }], temperature_C: 22 },
    calendar: 'staggered-pull',
    baseAvailable_mL: 3000,
    baseEach_mL: 800,
    vessel: { kind: 'swing-top', capacity_mL: 1000 },
    start,
    seed: 7,
  });
  const jar = jars[0]?.id ?? '';
  await workbench.ask('jars:start', { jars: [jar], at: start });
  for (const [hours, brix] of [4, 3.4, 2.8, 2.4, 2].entries()) {
    await workbench.ask('readings:log', {
      jar,
      at: new Date(Date.parse(start) + hours * 15 * 3_600_000).toISOString(),
      brix,
    });
  }
  await workbench.open(`/jars/${jar}`);
  const sheet = page.getByRole('region', { name: 'What it holds and may become' });
  const closing = page.getByLabel('Sugar left when it is closed');
  await closing.fill('1');
  // 1 oz/gal: 28.349523 g in 3.785412 L (NIST SP 811) is 7.489 g/L.
  await expect(page.getByText('Understood: 1 oz/gal')).toBeVisible();
  await expect(sheet).toContainText('Closed with 1 oz/gal of sugar left');
  await expect(sheet).toContainText(/could build up \d+\spsi on a warm day/);
  await closing.fill('1.006');
  await expect(sheet).toContainText('Closed with 2.07 oz/gal of sugar left');
  const course = page.getByRole('region', { name: 'Its course' });
  const wanted = course.getByLabel('Sweetness wanted');
  await wanted.fill('1.010');
  await expect(course.getByText('Understood: 2.6 °Bx, SG 1.010')).toBeVisible();
  await expect(course.getByText(/2\.6\s°Bx after about \d+\sh/)).toBeVisible();
  await wanted.fill('4 oz/gal');
  await expect(course.getByText('Understood: 3 °Bx, SG 1.012')).toBeVisible();
  await wanted.fill('200 brix');
  await wanted.blur();
  await expect(course.getByText(/permitted/i)).toBeVisible();
});
