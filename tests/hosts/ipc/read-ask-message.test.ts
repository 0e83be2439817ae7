import { describe, expect, test } from 'vitest';
import { readAskMessage } from '#hosts/ipc/read-ask-message.ts';
import { readAsk } from '#hosts/loopback/messages.ts';

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

  test('keeps the ways of an answer where they are some, and takes no others', () => {
    const asked = { ask: 'a1', name: 'kitchen:open', input: {} };
    expect(readAskMessage({ ...asked, ways: { language: 'pt-BR', decimal: ',', more: 1 } })?.ways).toEqual({
      language: 'pt-BR',
      decimal: ',',
    });
    expect(readAsk({ ...asked, ways: { language: 'de', decimal: ',' } })?.ways).toEqual({
      language: 'de',
      decimal: ',',
    });
    for (const ways of [
      null,
      'de',
      {},
      { language: '../../etc', decimal: '.' },
      { language: 'de', decimal: ';' },
      { language: 'x'.repeat(90), decimal: '.' },
    ]) {
      expect([readAskMessage({ ...asked, ways }), readAsk({ ...asked, ways })], JSON.stringify(ways)).toEqual([
        null,
        null,
      ]);
    }
  });
});
