// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { afterPaint } from '#renderer/app/after-paint.ts';

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe('afterPaint()', () => {
  it('resolves only after a frame’s callbacks, and when its task is over', async () => {
    const order: string[] = [];
    const done = afterPaint().then(() => order.push('after'));
    requestAnimationFrame(() => order.push('frame'));
    order.push('now');
    await done;
    expect(order).toEqual(['now', 'frame', 'after']);
  });

  it('does not wait where nothing is painted: hidden, about to go, or covered', async () => {
    vi.stubGlobal('requestAnimationFrame', () => 0);
    const hidden = vi.spyOn(document, 'hidden', 'get').mockReturnValue(true);
    await afterPaint();
    hidden.mockReturnValue(false);
    const leaving = afterPaint();
    window.dispatchEvent(new Event('pagehide'));
    await leaving;
    // Whoever begins to wait while the page goes is not kept waiting either.
    let isOver = false;
    window.addEventListener('pagehide', () => void afterPaint().then(() => (isOver = true)), { once: true });
    window.dispatchEvent(new Event('pagehide'));
    await Promise.resolve();
    expect(isOver).toBe(true);
    window.dispatchEvent(new Event('pageshow'));
    const start = performance.now();
    await afterPaint();
    expect(performance.now() - start).toBeGreaterThan(50);
  });
});
