// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { FindingsPage } from '#renderer/pages/findings/findings-page.tsx';
import { HouseRecipesPage } from '#renderer/pages/house-recipes/house-recipes-page.tsx';
import { TastersPage } from '#renderer/pages/tasters/tasters-page.tsx';
import { TrialPage } from '#renderer/pages/trial/trial-page.tsx';
import { TrialsPage } from '#renderer/pages/trials/trials-page.tsx';
import { pageOver } from '../page-over.tsx';
import { findings, idOf, kitchen, trial, trialSummary } from '../small-kitchen.ts';
import { standInBridge } from '../stand-in-bridge.ts';

afterEach(cleanup);

const ana = {
  id: idOf(50),
  revision: 3,
  isSample: true,
  name: 'Ana',
  avoids: ['nuts' as const],
  avoidsAlcohol: true,
  note: null,
  tastings: 2,
};

describe('Trials', () => {
  it('lists each trial with its question, levels, state and sample mark', async () => {
    pageOver(standInBridge({ 'trials:list': { trials: [trialSummary] } }), <TrialsPage />);
    const row = within(await screen.findByRole('listitem'));
    expect(row.getByRole('link', { name: 'How long for raspberry?' }).getAttribute('href')).toBe(`/trials/${trial.id}`);
    for (const words of ['How many days', '2 days and 4 days', '2 jars', 'fermenting', 'sample']) {
      expect(row.getByText(new RegExp(words))).toBeTruthy();
    }
  });

  it('says why when the list can’t be read, and reads it on asking again', async () => {
    const bridge = standInBridge({ 'trials:list': { trials: [trialSummary] } });
    bridge.fail('trials:list', { code: 'store-locked', message: 'Another program holds the kitchen.' });
    pageOver(bridge, <TrialsPage />);
    expect((await screen.findByRole('alert')).textContent).toContain('Another program holds the kitchen.');
    await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
    expect(await screen.findByText('How long for raspberry?')).toBeTruthy();
  });
});

describe('A trial', () => {
  it('shows jars and what is held, and on its findings each one as sentence and table', async () => {
    const bridge = standInBridge({
      'kitchen:open': kitchen,
      'pantry:list': { ingredients: [] },
      'trials:open': trial,
      'trials:timeline': { jars: [], tastings: [] },
      'findings:read': findings,
      'findings:places': { rankings: [], scored: [] },
      'findings:penalties': { attributes: [], rule: '' },
      'findings:drivers': { drivers: [], untold: [], together: [], needs: 'Too few jars.' },
      'profiles:open': { wishes: [], attributes: [], closedTastings: 1, setAfterReveal: false },
      'sips:byTrial': { sips: [] },
      'tastings:list': { tastings: [] },
    });
    pageOver(bridge, <TrialPage id={trial.id} />);
    expect(await screen.findByRole('heading', { level: 1, name: 'How long for raspberry?' })).toBeTruthy();
    expect(await screen.findAllByRole('img', { name: /^Jar / })).toHaveLength(2);
    expect(screen.getByText('under cloth')).toBeTruthy();
    cleanup();
    pageOver(bridge, <FindingsPage id={trial.id} />);
    expect(await screen.findByText('Tang rises with the days.')).toBeTruthy();
    const table = within(screen.getByRole('table', { name: /tang: mean/, hidden: true }));
    expect(table.getByRole('row', { name: '4\u00a0days 2 7.0 6.0 to 8.0 a', hidden: true })).toBeTruthy();
  });

  it('says that nothing was tasted yet', async () => {
    const bridge = standInBridge({
      'kitchen:open': kitchen,
      'pantry:list': { ingredients: [] },
      'trials:open': trial,
      'findings:read': { ...findings, tastings: 0, scores: [], analysis: null, headline: null, sentences: [] },
      'findings:places': { rankings: [], scored: [] },
      'sips:byTrial': { sips: [] },
      'tastings:list': { tastings: [] },
    });
    pageOver(bridge, <FindingsPage id={trial.id} />);
    expect(await screen.findByRole('heading', { name: /No tasting of this trial is closed yet/ })).toBeTruthy();
  });
});

describe('Tasters', () => {
  it('says what each avoids and offers the first one to an empty list', async () => {
    const bridge = standInBridge({ 'tasters:list': { tasters: [ana] } });
    const { unmount } = pageOver(bridge, <TastersPage />);
    expect(await screen.findByText('avoids nuts and alcohol')).toBeTruthy();
    unmount();
    bridge.answer({ 'tasters:list': { tasters: [] } });
    pageOver(bridge, <TastersPage />);
    expect(await screen.findByText('Nobody tastes yet')).toBeTruthy();
  });

  it('sends the revision it saw, and shows a refusal at its field', async () => {
    const bridge = standInBridge({ 'tasters:list': { tasters: [ana] } });
    bridge.fail('tasters:save', { code: 'invalid-input', message: 'There is an Ana already.', path: ['name'] });
    pageOver(bridge, <TastersPage />);
    await userEvent.click(await screen.findByRole('button', { name: 'Change Ana' }));
    await userEvent.click(screen.getByRole('button', { name: 'Keep' }));
    expect(bridge.asked.at(-1)?.input).toMatchObject({ id: ana.id, revision: 3, name: 'Ana', avoids: ['nuts'] });
    const field = await screen.findByRole('textbox', { name: 'Name' });
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText('There is an Ana already.')).toBeTruthy();
  });
});

describe('House recipes', () => {
  it('says on what each was decided', async () => {
    const recipe = {
      id: idOf(60),
      isSample: false,
      name: 'Raspberry',
      versions: 2,
      latest: 2,
      basis: 'sips' as const,
      createdAt: '2026-05-09T09:00:00Z',
      note: null,
    };
    pageOver(standInBridge({ 'recipes:list': { recipes: [recipe] } }), <HouseRecipesPage />);
    expect(await screen.findByText('decided by the maker’s own sips')).toBeTruthy();
    expect(screen.getByText('version 2 of 2 versions')).toBeTruthy();
  });
});
