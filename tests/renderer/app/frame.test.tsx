// @vitest-environment happy-dom
import { act, cleanup, render, screen, waitFor, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { App } from '#renderer/app/app.tsx';
import { connect } from '#renderer/app/ask.ts';
import { kitchen, trialSummary, undoState } from '../small-kitchen.ts';
import { type StandInBridge, standInBridge } from '../stand-in-bridge.ts';
import '../patience.ts';

afterEach(cleanup);
beforeEach(() => {
  window.location.hash = '#/trials';
});

function appOver(more: Parameters<StandInBridge['answer']>[0] = {}): StandInBridge {
  const bridge = standInBridge({
    'kitchen:open': kitchen,
    'undo:state': undoState,
    'trials:list': { trials: [] },
    'tasters:list': { tasters: [] },
    ...more,
  });
  connect(bridge);
  render(<App bridge={bridge} />);
  return bridge;
}

const timesAsked = (bridge: StandInBridge, wanted: string) => bridge.asked.filter(({ name }) => name === wanted).length;

describe('The frame', () => {
  it('leads to the seven screens and marks the one that is shown', async () => {
    appOver();
    const nav = within(await screen.findByRole('navigation', { name: 'Screens' }));
    for (const name of ['Today', 'Trials', 'House recipes', 'Bases', 'Pantry', 'Tasters', 'Data']) {
      expect(nav.getAllByRole('link', { name }).length).toBeGreaterThan(0);
    }
    expect(nav.getByRole('link', { name: 'Trials' }).getAttribute('aria-current')).toBe('page');
  });

  it('says that sample rows are here, and only then', async () => {
    appOver({ 'kitchen:open': { ...kitchen, sampleRows: 5 } });
    expect(await screen.findByRole('link', { name: /Sample kitchen/ })).toBeTruthy();
    cleanup();
    appOver();
    await screen.findByText('Lane kitchen');
    expect(screen.queryByRole('link', { name: /Sample kitchen/ })).toBeNull();
  });

  it('reads again what a change touched, and nothing else', async () => {
    const bridge = appOver();
    await screen.findByText('Ask one question');
    const kitchensBefore = timesAsked(bridge, 'kitchen:open');
    bridge.answer({ 'trials:list': { trials: [trialSummary] } });
    act(() => bridge.tell({ kind: 'changed', step: 2, tables: ['trials'] }));
    expect(await screen.findByText('How long for raspberry?')).toBeTruthy();
    expect(timesAsked(bridge, 'kitchen:open')).toBe(kitchensBefore + 1);
    const listsBefore = timesAsked(bridge, 'trials:list');
    act(() => bridge.tell({ kind: 'changed', step: 3, tables: ['ingredients'] }));
    await waitFor(() => expect(timesAsked(bridge, 'kitchen:open')).toBe(kitchensBefore + 2));
    expect(timesAsked(bridge, 'trials:list')).toBe(listsBefore);
  });

  it('goes where the menu says', async () => {
    const bridge = appOver();
    await screen.findByText('Ask one question');
    act(() => bridge.tell({ kind: 'menu', act: 'go:/tasters' }));
    expect(await screen.findByText('Nobody tastes yet')).toBeTruthy();
  });

  it('undoes with its words, by button, by keyboard and from the menu', async () => {
    const bridge = appOver({ 'undo:last': { step: 4, summary: 'Add the taster Ana' } });
    await userEvent.click(await screen.findByRole('button', { name: 'Undo: Add the taster Ana' }));
    expect(await screen.findByText('Undone: Add the taster Ana')).toBeTruthy();
    await userEvent.keyboard('{Control>}z{/Control}');
    await waitFor(() => expect(timesAsked(bridge, 'undo:last')).toBe(2));
    act(() => bridge.tell({ kind: 'menu', act: 'undo' }));
    await waitFor(() => expect(timesAsked(bridge, 'undo:last')).toBe(3));
  });

  it('says why undo is refused instead of doing it', async () => {
    const bridge = appOver({
      'undo:state': { ...undoState, undo: 'Close the tasting', undoRefused: 'Its codes were revealed.' },
    });
    await screen.findByRole('button', { name: /Undo: Close the tasting/ });
    act(() => bridge.tell({ kind: 'menu', act: 'undo' }));
    expect(await screen.findByText('Its codes were revealed.')).toBeTruthy();
    expect(timesAsked(bridge, 'undo:last')).toBe(0);
  });

  it('says plainly that an address leads nowhere', async () => {
    window.location.hash = '#/cellar';
    appOver();
    expect(await screen.findByRole('heading', { name: 'Nothing stands here' })).toBeTruthy();
  });
});
