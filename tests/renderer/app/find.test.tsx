// @vitest-environment happy-dom
import { cleanup, render, screen, waitFor, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { App } from '#renderer/app/app.tsx';
import { connect } from '#renderer/app/ask.ts';
import { idOf, kitchen, undoState } from '../small-kitchen.ts';
import { standInBridge } from '../stand-in-bridge.ts';
import '../patience.ts';

afterEach(cleanup);
beforeEach(() => {
  window.location.hash = '#/tasters';
});

function appOver() {
  const bridge = standInBridge({
    'kitchen:open': kitchen,
    'undo:state': undoState,
    'trials:list': { trials: [] },
    'tasters:list': { tasters: [] },
    'pantry:list': { ingredients: [] },
    'kitchen:find': ({ words }: { words: string }) =>
      words === 'ann'
        ? {
            found: [
              { kind: 'taster' as const, id: idOf(7), name: 'Ann', facts: '' },
              { kind: 'trial' as const, id: idOf(8), name: 'Annual?', facts: 'days' },
            ],
            more: 3,
          }
        : { found: [], more: 0 },
  });
  connect(bridge);
  render(<App bridge={bridge} />);
  return bridge;
}

describe('Find', () => {
  it('opens by keyboard, moves by arrows, goes by Enter, and says how many more there are', async () => {
    appOver();
    await screen.findByRole('heading', { level: 1, name: 'Tasters' });
    await userEvent.keyboard('{Control>}k{/Control}');
    const field = await screen.findByRole('combobox', { name: /A jar, trial, taster/ });
    await userEvent.type(field, 'ann');
    const list = within(await screen.findByRole('listbox'));
    await waitFor(() =>
      expect(list.getAllByRole('option').map((line) => line.textContent)).toEqual([
        'AnnTaster',
        'Annual?Trial: How many days',
      ]),
    );
    expect(screen.getByText('and 3 more: write another word')).toBeTruthy();
    expect(field.getAttribute('aria-activedescendant')).toBe(list.getAllByRole('option')[0]?.id);
    await userEvent.keyboard('{ArrowDown}');
    expect(list.getAllByRole('option')[1]?.getAttribute('aria-selected')).toBe('true');
    await userEvent.keyboard('{Enter}');
    await waitFor(() => expect(window.location.hash).toBe(`#/trials/${idOf(8)}`));
    expect(screen.queryByRole('combobox')).toBeNull();
  });

  it('offers things to do before a word is written, and says when nothing answers', async () => {
    appOver();
    await userEvent.click(await screen.findByRole('button', { name: 'Find' }));
    expect(await screen.findByRole('option', { name: /Plan a trial/ })).toBeTruthy();
    await userEvent.type(screen.getByRole('combobox'), 'zzz');
    expect(await screen.findByText('Nothing answers to these words.')).toBeTruthy();
    await userEvent.clear(screen.getByRole('combobox'));
    await userEvent.click(await screen.findByRole('option', { name: /Look at the pantry/ }));
    await waitFor(() => expect(window.location.hash).toBe('#/pantry'));
  });

  it('shows every key and every word by "?", but not while somebody writes', async () => {
    appOver();
    await screen.findByRole('heading', { level: 1, name: 'Tasters' });
    await userEvent.keyboard('?');
    expect(await screen.findByRole('heading', { name: 'Keys and words' })).toBeTruthy();
    expect(screen.getByText('The level that the others are compared with: usually how you make it now.')).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'Close' }));
    await waitFor(() => expect(screen.queryByRole('heading', { name: 'Keys and words' })).toBeNull());
    await userEvent.click(screen.getByRole('button', { name: 'Find' }));
    await userEvent.type(await screen.findByRole('combobox'), '?');
    expect(screen.queryByRole('heading', { name: 'Keys and words' })).toBeNull();
  });
});
