import { goTo } from './every-screen.ts';
import { sidewaysScroll } from './looked-over.ts';
import { hoursAgo } from './tasted-trial.ts';
import { expect, test } from './workbench.ts';

const long = 'Siebenundzwanzigstesstachelbeerwasserkefirexperiment';

test('a name without a gap breaks, and no screen scrolls sideways for it', async ({ workbench }) => {
  const { page, ask } = workbench;
  const { trial, jars } = await ask('trials:save', {
    question: `${long}: how many days?`,
    factor: 'formula',
    levels: [
      { name: `${long} 1`, additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }] },
      { name: `${long} 2`, additions: [{ ingredient: 'mango', mass_g: 75, state: 'fresh' }] },
    ],
    control: `${long} 1`,
    held: { days: 2, cover: 'lid' },
    calendar: 'staggered-pull',
    baseAvailable_mL: 3000,
    baseEach_mL: 700,
    vessel: { kind: 'swing-top', capacity_mL: 1000 },
    start: hoursAgo(50),
    seed: 7,
  });
  await ask('jars:start', { jars: jars.map(({ id }) => id), at: hoursAgo(50) });
  const { taster } = await ask('tasters:save', { name: long });
  const samples = jars.map(({ id }) => ({ jar: id }));
  const { tasting } = await ask('tastings:build', { trial, name: long, samples, tasters: [taster], seed: 5 });
  await workbench.open('/');
  const ofTrial = ['', '/taste', '/taste/new', '/promote', '/labels', '/wishes', '/telling-apart'];
  const ofTasting = ['', '/pour', `/sheet/${taster}`, '/pen-sheets'];
  for (const screen of [
    '/',
    '/trials',
    '/tasters',
    `/jars/${jars[0]?.id}`,
    ...ofTrial.map((end) => `/trials/${trial}${end}`),
    ...ofTasting.map((end) => `/tastings/${tasting}${end}`),
  ]) {
    await goTo(page, screen);
    expect(await sidewaysScroll(page, 360), screen).toBeLessThanOrEqual(0);
  }
});
