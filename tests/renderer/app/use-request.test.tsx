// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { pageOver } from '../page-over.tsx';
import { idOf } from '../small-kitchen.ts';
import { type StandInBridge, standInBridge } from '../stand-in-bridge.ts';

afterEach(cleanup);

function Page() {
  useAnswer('undo:state', {});
  const save = useRequest('tasters:save', { done: () => 'Ana is here.' });
  return (
    <button type="button" onClick={() => save.mutate({ name: 'Ana' })}>
      Add
    </button>
  );
}

const stateAfter = (request: string, step = 5, undoRefused: string | null = null): ValueOf<'undo:state'> => ({
  undo: 'Add the taster Ana',
  undoRefused,
  undoStep: { step, request },
  redo: null,
});

/** Presses the button, after which undo stands as it is said. */
async function saidAfter(state: ValueOf<'undo:state'>): Promise<StandInBridge> {
  const bridge = standInBridge({
    'undo:state': stateAfter('jars:start', 4),
    'tasters:save': { taster: idOf(1) },
  });
  pageOver(bridge, <Page />);
  await screen.findByRole('button', { name: 'Add' });
  await expect.poll(() => bridge.asked.length, { timeout: 15_000 }).toBe(1);
  bridge.answer({
    'undo:state': state,
    'tasters:save': { taster: idOf(1) },
    'undo:last': { step: 6, summary: 'Add the taster Ana' },
  });
  await userEvent.click(screen.getByRole('button', { name: 'Add' }));
  await screen.findByText('Ana is here.');
  return bridge;
}

describe('useRequest(name, { done })', () => {
  it('says what was done with the way back, for that step alone', async () => {
    const bridge = await saidAfter(stateAfter('tasters:save'));
    await userEvent.click(screen.getByRole('button', { name: 'Undo' }));
    expect(await screen.findByText('Undone: Add the taster Ana')).toBeTruthy();
    expect(bridge.asked.find(({ name }) => name === 'undo:last')?.input).toEqual({ step: 5 });
  });

  it.each([
    ['something else is the newest step', stateAfter('jars:pull')],
    ['nothing was written', stateAfter('jars:start', 4)],
    ['the step can’t be taken back', stateAfter('tasters:save', 5, 'Its codes were revealed.')],
  ])('offers no way back where %s', async (_why, state) => {
    await saidAfter(state);
    expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull();
  });
});
