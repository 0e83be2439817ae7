import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openKitchen } from '#store/open-kitchen.ts';
import { temporaryDesk, temporaryFolder } from '#tests/store/temporary-kitchen.ts';

describe('the sample kitchen', () => {
  it('holds a days, an amount and a formula trial, a fresh/frozen one still fermenting, and one winner promoted', async () => {
    const { ask } = await temporaryDesk();
    await ask('kitchen:sample', {});
    const { trials } = await ask('trials:list', {});
    expect(trials.map(({ factor, state }) => `${factor} ${state}`).sort()).toEqual([
      'amount pulled',
      'days pulled',
      'formula pulled',
      'state fermenting',
    ]);
    expect((await ask('tasters:list', {})).tasters.map(({ name }) => name)).toEqual(
      [...'ABCDEFGH'].map((letter) => `Taster ${letter}`),
    );
    expect((await ask('recipes:list', {})).recipes).toMatchObject([{ basis: 'panel', isSample: true }]);
    const days = trials.find(({ factor }) => factor === 'days');
    const findings = await ask('findings:read', { trial: days?.id ?? '' });
    expect(findings.sentences.map(({ attribute }) => attribute)).toEqual(
      expect.arrayContaining(['tang', 'fizz', 'sweetness', 'liking']),
    );
    for (const { sentence } of findings.sentences) {
      expect(sentence).toMatch(/^[A-Z].*\.$/);
      expect(sentence).not.toMatch(/\bp\s*[=<]|proved|no difference|NaN|undefined|null/i);
    }
  });

  it('is marked as sample in every row, fills only an empty kitchen, and goes in one step that can be undone', async () => {
    const { ask, fail, kitchen } = await temporaryDesk();
    const { rows } = await ask('kitchen:sample', {});
    const opened = await ask('kitchen:open', {});
    expect(opened.sampleRows).toBe(rows);
    expect(Object.values(opened.counts).reduce((sum, n) => sum + n, 0)).toBe(rows);
    expect(await fail('kitchen:sample', {})).toMatchObject({ code: 'refused' });
    await ask('tasters:save', { name: 'My own taster' });
    await ask('kitchen:removeSample', {});
    const emptied = await ask('kitchen:open', {});
    expect(emptied.sampleRows).toBe(0);
    expect(Object.entries(emptied.counts).filter(([, n]) => n > 0)).toEqual([['tasters', 1]]);
    await ask('undo:last', {});
    expect((await ask('kitchen:open', {})).sampleRows).toBe(rows);
    expect(await ask('store:check', {})).toEqual({ ok: true, problems: [] });
    expect(kitchen.read.one('SELECT count(*) AS n FROM tasters')).toEqual({ n: 9 });
  });
});

describe('store:backup', () => {
  it('writes a whole copy beside the kitchen or where told, never over a file', async () => {
    const { ask, fail } = await temporaryDesk();
    await ask('kitchen:sample', {});
    const to = join(temporaryFolder(), 'copy.sidejar');
    const made = await ask('store:backup', { to });
    expect(made).toMatchObject({ file: to, sha256: expect.stringMatching(/^[0-9a-f]{64}$/) });
    expect(await fail('store:backup', { to })).toMatchObject({ code: 'refused', path: ['to'] });
    const copy = await openKitchen(to);
    expect(copy.read.one('SELECT count(*) AS n FROM trials')).toEqual({ n: 4 });
    copy.close();
    expect(existsSync((await ask('store:backup', {})).file)).toBe(true);
    expect(await fail('store:backup', { to: '/dev/null/x.sidejar' })).toMatchObject({
      code: 'store-missing',
      path: ['to'],
    });
  });
});

describe('history and names', () => {
  it('tell what was done and when; the kitchen can be renamed', async () => {
    const { ask } = await temporaryDesk();
    await ask('kitchen:change', { name: 'Stall', measures: 'us' });
    expect(await ask('kitchen:open', {})).toMatchObject({ name: 'Stall', measures: 'us' });
    await ask('undo:last', {});
    const { steps } = await ask('history:read', {});
    expect(steps.map(({ kind, request }) => `${kind} ${request}`)).toEqual([
      'undo undo:last',
      'do kitchen:change',
      'do kitchen:begin',
    ]);
    expect(steps[0]?.at).toBe('2026-05-01T08:00:00.000Z');
  });
});

describe('drafts', () => {
  it('are found as they were left, leave nothing to undo, and can be forgotten', async () => {
    const { ask, fail, kitchen } = await temporaryDesk();
    const steps = () => kitchen.read.one<{ n: number }>('SELECT count(*) AS n FROM steps')?.n;
    const before = steps();
    expect(await ask('drafts:open', { name: 'plan' })).toEqual({ draft: null });
    await ask('drafts:keep', { name: 'plan', body: { question: 'How', levels: [1, null] } });
    await ask('drafts:keep', { name: 'plan', body: { question: 'How many', levels: [1, null] } });
    expect((await ask('drafts:open', { name: 'plan' })).draft?.body).toEqual({
      question: 'How many',
      levels: [1, null],
    });
    expect(steps()).toBe(before);
    await ask('drafts:keep', { name: 'plan', body: null });
    expect(await ask('drafts:open', { name: 'plan' })).toEqual({ draft: null });
    expect(await fail('drafts:keep', { name: 'plan', body: 'x'.repeat(200_001) })).toMatchObject({
      code: 'invalid-input',
    });
    expect((await ask('store:check', {})).ok).toBe(true);
  });
});
