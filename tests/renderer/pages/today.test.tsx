// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { dueJars } from '#renderer/pages/today/due-jars.ts';
import { TodayPage } from '#renderer/pages/today/today-page.tsx';
import { pageOver } from '../page-over.tsx';
import { jarOf, kitchen, trial, trialSummary } from '../small-kitchen.ts';
import { standInBridge } from '../stand-in-bridge.ts';

afterEach(cleanup);

const around = { 'kitchen:open': kitchen, 'pantry:list': { ingredients: [] }, 'tastings:list': { tastings: [] } };

describe('dueJars(trials, now)', () => {
  const now = Date.parse('2026-05-04T09:00:00Z');

  it('puts the jar that is late first and tells late from later', () => {
    const due = dueJars([trial], now);
    expect(due.map(({ when, jars }) => [when, jars.map(({ label }) => label)])).toEqual([
      ['overdue', ['A']],
      ['later', ['B']],
    ]);
  });

  it('groups jars that are due on the same day', () => {
    const both = { ...trial, jarsWhole: [jarOf('A', 2), jarOf('B', 2, { plannedPull: '2026-05-05T08:00:00Z' })] };
    const [only, ...others] = dueJars([both], now);
    expect(others).toEqual([]);
    expect(only?.at).toBe('2026-05-05T08:00:00Z');
  });

  it('wants planned jars started, and nothing of those that are done with', () => {
    const jars = [jarOf('A', 1, { state: 'planned', startedAt: null }), jarOf('B', 2, { state: 'pulled' })];
    expect(dueJars([{ ...trial, jarsWhole: jars }], now).map(({ what }) => what)).toEqual(['start']);
  });
});

describe('Today', () => {
  it('teaches when the kitchen is empty and fills it with the sample', async () => {
    const bridge = standInBridge({
      ...around,
      'kitchen:open': { ...kitchen, counts: { trials: 0, jars: 0 } },
      'trials:list': { trials: [] },
      'kitchen:sample': { rows: 564 },
    });
    pageOver(bridge, <TodayPage />);
    expect((await screen.findByRole('link', { name: 'Plan your first trial' })).getAttribute('href')).toBe(
      '/trials/new',
    );
    await userEvent.click(await screen.findByRole('button', { name: 'Start from the sample kitchen' }));
    await screen.findByText(/564 rows/);
    expect(bridge.asked.some(({ name }) => name === 'kitchen:sample')).toBe(true);
  });

  it('shows the jars on the shelf with their words, and pulls those that are due', async () => {
    const bridge = standInBridge({
      ...around,
      'trials:list': { trials: [trialSummary] },
      'trials:open': trial,
      'jars:pull': { jars: [jarOf('A', 1, { state: 'pulled' })] },
    });
    pageOver(bridge, <TodayPage />);
    const overdue = within(await screen.findByRole('list', { name: 'Overdue' }));
    expect(await screen.findByRole('img', { name: /Jar A, 2 days, the control: due/ })).toBeTruthy();
    await userEvent.click(overdue.getByRole('button', { name: 'Pulled it: A' }));
    expect(bridge.asked.find(({ name }) => name === 'jars:pull')?.input).toEqual({ jars: [jarOf('A', 1).id] });
    expect(await screen.findByText('Pulled A.')).toBeTruthy();
  });
});
