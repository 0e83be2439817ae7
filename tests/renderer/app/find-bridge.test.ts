// @vitest-environment happy-dom
import { beforeEach, describe, expect, it } from 'vitest';
import { findBridge, forgetKey } from '#renderer/app/find-bridge.ts';
import { standInBridge } from '../stand-in-bridge.ts';

interface Seen {
  readonly path: string;
  readonly body: unknown;
  readonly key: string | null;
  readonly hashThen: string;
}

/** A server that trades the ticket "once" a single time and answers every request with its name. */
function loopbackServer() {
  const seen: Seen[] = [];
  let isTraded = false;
  const carry = (async (path: string, init: RequestInit = {}) => {
    const body: unknown = typeof init.body === 'string' ? JSON.parse(init.body) : null;
    const key = new Headers(init.headers).get('x-sidejar-key');
    seen.push({ path, body, key, hashThen: window.location.hash });
    if (path === '/key') {
      const isGood = (body as { ticket: string }).ticket === 'once' && !isTraded;
      isTraded ||= isGood;
      return Response.json(isGood ? { key: 'the-key' } : { ok: false }, { status: isGood ? 200 : 403 });
    }
    return key === 'the-key'
      ? Response.json({ ok: true, value: (body as { name: string }).name })
      : Response.json({ ok: false, error: { code: 'not-allowed', message: 'No key.' } }, { status: 403 });
  }) as typeof fetch;
  return { seen, carry };
}

beforeEach(() => {
  forgetKey(window);
  window.location.hash = '';
});

describe('findBridge', () => {
  it('takes the bridge that the window offers and leaves the address alone', async () => {
    const offered = standInBridge();
    Reflect.set(window, 'sidejar', offered);
    window.location.hash = '#/trials';
    expect(await findBridge({ window })).toBe(offered);
    expect(window.location.hash).toBe('#/trials');
    Reflect.deleteProperty(window, 'sidejar');
  });

  it('trades the ticket once and has it out of the address before anything is sent', async () => {
    const { seen, carry } = loopbackServer();
    window.location.hash = '#ticket=once';
    const bridge = await findBridge({ window, fetch: carry });
    expect(seen).toEqual([{ path: '/key', body: { ticket: 'once' }, key: null, hashThen: '#/' }]);
    expect(await bridge?.ask({ ask: '1', name: 'trials:list', input: {} })).toEqual({ ok: true, value: 'trials:list' });
    expect(seen[1]).toMatchObject({ path: '/ask', key: 'the-key' });
  });

  it('goes on to the place that stands behind the ticket', async () => {
    window.location.hash = '#ticket=once&go=/trials/plan';
    await findBridge({ window, fetch: loopbackServer().carry });
    expect(window.location.hash).toBe('#/trials/plan');
  });

  it('uses the kept key after a reload, without a second trade', async () => {
    const { seen, carry } = loopbackServer();
    window.location.hash = '#ticket=once';
    await findBridge({ window, fetch: carry });
    const again = await findBridge({ window, fetch: carry });
    expect(await again?.ask({ ask: '1', name: 'trials:list', input: {} })).toMatchObject({ ok: true });
    expect(seen.filter(({ path }) => path === '/key')).toHaveLength(1);
  });

  it('finds nothing when the ticket was used before and no key is kept', async () => {
    const { carry } = loopbackServer();
    window.location.hash = '#ticket=once';
    await findBridge({ window, fetch: carry });
    forgetKey(window);
    window.location.hash = '#ticket=once';
    expect(await findBridge({ window, fetch: carry })).toBeNull();
    expect(window.location.hash).toBe('#/');
  });
});
