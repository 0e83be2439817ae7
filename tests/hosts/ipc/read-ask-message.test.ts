import { describe, expect, test } from 'vitest';
import { readAskMessage } from '#hosts/ipc/read-ask-message.ts';

describe('readAskMessage', () => {
  test('takes mark, name and input, and nothing besides', () => {
    expect(readAskMessage({ ask: 'a1', name: 'kitchen:open', input: { x: 1 }, store: '/etc' })).toEqual({
      ask: 'a1',
      name: 'kitchen:open',
      input: { x: 1 },
    });
  });

  test('leaves the input to the desk, even when there is none', () => {
    expect(readAskMessage({ ask: 'a1', name: 'kitchen:open' })).toEqual({
      ask: 'a1',
      name: 'kitchen:open',
      input: undefined,
    });
  });

  test.each([
    [null],
    [undefined],
    ['kitchen:open'],
    [['a', 'kitchen:open']],
    [{ name: 'kitchen:open', input: {} }],
    [{ ask: 'a', input: {} }],
    [{ ask: '', name: 'kitchen:open', input: {} }],
    [{ ask: 1, name: 'kitchen:open', input: {} }],
    [{ ask: 'a', name: ['kitchen:open'], input: {} }],
    [{ ask: 'a'.repeat(201), name: 'kitchen:open', input: {} }],
    [{ ask: 'a', name: 'n'.repeat(201), input: {} }],
  ])('refuses %j', (value) => {
    expect(readAskMessage(value)).toBeNull();
  });
});
