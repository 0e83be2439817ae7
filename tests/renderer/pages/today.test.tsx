// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import type { Need } from '#renderer/pages/today/need.ts';
import { TodayPage } from '#renderer/pages/today/today-page.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { pageOver } from '../page-over.tsx';
import { jarOf, kitchen, trial, trialSummary } from '../small-kitchen.ts';
import { standInBridge } from '../stand-in-bridge.ts';

afterEach(cleanup);

const around = { 'kitchen:open': kitchen, 'pantry:list': { ingredients: [] } };

const pull: Need = {
  key: 'pull',
  kind: 'pull',
  when: 'overdue',
  dueAt: '2026-05-03T08:00:00.000Z',
  trial: { id: trial.id, question: trial.question },
  jars: [{ id: jarOf('A', 1).id, name: 'A', isSample: false }],
  base: null,
  culture: null,
  tasting: null,
  isSample: false,
  basis: null,
  putOff: null,
};

function today(needs: readonly Need[]): ValueOf<'today:read'> {
  return { now: '2026-05-04T09:00:00.000Z', zone: 'UTC', needs: [...needs], bottlesWaiting: 0 };
}

describe('Today', () => {
  it('teaches when the kitchen is empty and fills it with the sample', async () => {
    const bridge = standInBridge({
      ...around,
      'kitchen:open': { ...kitchen, counts: { trials: 0, jars: 0 } },
      'trials:list': { trials: [] },
      'today:read': today([]),
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
      'today:read': today([pull]),
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
