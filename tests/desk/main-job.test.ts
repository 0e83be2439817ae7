import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';

// The main job from question to house recipe, on a new store, by requests alone; every step is looked for in the rows.

describe('the main job', () => {
  it('goes from a base to a house recipe version with its chain, and can be scaled', async () => {
    const { ask, kitchen, clock } = await temporaryDesk();
    const rows = <Found>(sql: string) => kitchen.read.all<Found>(sql);

    const { base } = await ask('bases:start', { name: 'First ferment', volume_mL: 3000, sugarStart_g_per_L: 60 });
    expect(rows('SELECT name, volume_mL FROM bases')).toEqual([{ name: 'First ferment', volume_mL: 3000 }]);

    const plan = await ask('trials:plan', daysPlan);
    expect(plan.feasible).toBe(true);
    expect(rows('SELECT id FROM trials')).toEqual([]);

    const saved = await ask('trials:save', { ...daysPlan, base });
    expect(rows('SELECT label, base_mL, planned_pull FROM jars ORDER BY label')).toEqual([
      { label: 'A', base_mL: 800, planned_pull: '2026-05-02T08:00:00.000Z' },
      { label: 'B', base_mL: 800, planned_pull: '2026-05-03T08:00:00.000Z' },
      { label: 'C', base_mL: 800, planned_pull: '2026-05-04T08:00:00.000Z' },
    ]);
    expect(rows('SELECT name FROM levels WHERE is_control = 1')).toEqual([{ name: '2 days' }]);
    expect((await ask('bases:open', { base })).left_mL).toBe(600);

    const jars = saved.jars.map(({ id }) => id);
    await ask('jars:start', { jars });
    const [a = '', b = '', c = ''] = jars;
    clock.move(24);
    await ask('readings:log', { jar: a, brix: 5.2, ph: 3.4, temperature_C: 21.5 });
    await ask('sightings:log', { jar: a, what: 'first-bubbles' });
    await ask('sips:log', { jar: a, tang: 3, fizz: 2, sweetness: 7, liking: 6 });
    await ask('jars:pull', { jars: [a] });
    clock.move(24);
    await ask('jars:pull', { jars: [b] });
    clock.move(24);
    await ask('jars:pull', { jars: [c] });
    await ask('jars:strain', { jars: [c] });
    expect(rows('SELECT brix, ph FROM readings')).toEqual([{ brix: 5.2, ph: 3.4 }]);
    expect(rows('SELECT what FROM sightings')).toEqual([{ what: 'first-bubbles' }]);
    expect(rows('SELECT tang, liking FROM sips')).toEqual([{ tang: 3, liking: 6 }]);
    expect(rows('SELECT count(*) AS n FROM jars WHERE pulled_at IS NOT NULL')).toEqual([{ n: 3 }]);

    const names = ['Ann', 'Ben', 'Cem', 'Dia'];
    const tasters: string[] = [];
    for (const name of names) tasters.push((await ask('tasters:save', { name })).taster);
    const { tasting, codes } = await ask('tastings:build', {
      trial: saved.trial,
      name: 'Day three',
      samples: jars.map((jar) => ({ jar, served_mL: 50 })),
      tasters,
      seed: 5,
    });
    expect(Object.keys(codes).sort()).toEqual([...jars].sort());
    expect(rows<{ n: number }>('SELECT count(*) AS n FROM servings')).toEqual([{ n: 12 }]);
    const open = await ask('tastings:open', { tasting });
    expect(open.sampleList.every(({ jar }) => jar === null)).toBe(true);

    // Invented scores: liking 5, 7, 6 for one, two and three days, each taster a little apart.
    const lines = names.flatMap((taster, t) =>
      jars.map(
        (jar, j) =>
          `${taster}\t${codes[jar]}\t${2 + 2 * j + (t % 2) * 0.5}\t${[5, 7, 6][j] ?? 0}${t === 0 && j === 0 ? '.5' : ''}`,
      ),
    );
    const imported = await ask('scores:import', {
      tasting,
      table: ['taster\tsample\ttang\tliking', ...lines].join('\n'),
    });
    expect(imported).toEqual({ accepted: 24, refused: [] });
    expect(rows('SELECT count(*) AS n FROM scores')).toEqual([{ n: 24 }]);

    await ask('tastings:close', { tasting });
    const findings = await ask('findings:read', { trial: saved.trial });
    const liking = findings.analysis?.attributes.find(({ attribute }) => attribute === 'liking');
    expect(liking?.means.map(({ sample, mean }) => [sample, mean])).toEqual([
      ['1 day', 5.125],
      ['2 days', 7],
      ['3 days', 6],
    ]);
    expect(findings.sentences).toHaveLength(2);

    const promoted = await ask('recipes:promote', { trial: saved.trial, level: '2 days', name: 'Raspberry two-day' });
    expect(promoted.version).toBe(1);
    expect(rows('SELECT number, basis FROM recipe_versions')).toEqual([{ number: 1, basis: 'panel' }]);
    const recipe = await ask('recipes:open', { recipe: promoted.recipe });
    const [version] = recipe.versionList;
    expect(version?.formula).toEqual({
      additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }],
      days: 2,
      cover: 'cloth',
      temperature_C: 22,
    });
    expect(version?.chain).toEqual({
      trial: { id: saved.trial, question: 'How many days?' },
      level: { id: expect.any(String), name: '2 days' },
      jars: [{ id: b, label: 'B' }],
      tastings: [{ id: tasting, name: 'Day three', scores: 8 }],
    });
    expect(version?.target.find(({ attribute }) => attribute === 'liking')).toEqual({
      attribute: 'liking',
      mean: 7,
      spread: 0,
      n: 4,
    });

    const scaled = await ask('recipes:scale', { recipe: promoted.recipe, volume_mL: 10 * (version?.volume_mL ?? 0) });
    expect(scaled.base_mL).toBeCloseTo(8000, 6);
    expect(scaled.additions[0]?.mass_g).toBeCloseTo(750, 6);

    const again = await ask('recipes:promote', { trial: saved.trial, level: '3 days', name: 'raspberry TWO-day' });
    expect(again).toEqual({ recipe: promoted.recipe, version: 2 });
    await ask('batches:log', { recipe: promoted.recipe, version: 1, volume_mL: 5000, lot: 'L1' });
    expect((await ask('recipes:open', { recipe: promoted.recipe })).batches).toMatchObject([{ version: 1, lot: 'L1' }]);
    expect(await ask('store:check', {})).toEqual({ ok: true, problems: [] });
  });

  it('can be undone step by step back to the closing of the tasting, and no further', async () => {
    const { ask, fail, clock, kitchen } = await temporaryDesk();
    const { trial, jars } = await ask('trials:save', daysPlan);
    const ids = jars.map(({ id }) => id);
    await ask('jars:start', { jars: ids });
    await ask('undo:last', {});
    expect(kitchen.read.one('SELECT count(*) AS n FROM jars WHERE started_at IS NOT NULL')).toEqual({ n: 0 });
    await ask('redo:last', {});
    clock.move(72);
    const { taster } = await ask('tasters:save', { name: 'Ann' });
    const { tasting } = await ask('tastings:build', {
      trial,
      name: 'T',
      samples: ids.map((jar) => ({ jar })),
      tasters: [taster],
    });
    await ask('tastings:close', { tasting });
    await ask('recipes:promote', { trial, level: '2 days', name: 'R' });
    await ask('undo:last', {});
    expect((await ask('recipes:list', {})).recipes).toEqual([]);
    const refused = await fail('undo:last', {});
    expect(refused.code).toBe('refused');
    expect(refused.message).toContain('nobody can taste blind again');
  });
});
