import { describe, expect, test } from 'vitest';
import { pagePolicy } from '#hosts/page-policy.ts';

function directives(): Map<string, string> {
  const parts = (pagePolicy['Content-Security-Policy'] ?? '').split('; ');
  return new Map(parts.map((part) => [part.split(' ')[0] ?? '', part.split(' ').slice(1).join(' ')]));
}

describe('the page’s policy', () => {
  test('starts from nothing and lets in only the page’s own scripts, with no inline and no eval', () => {
    expect(directives().get('default-src')).toBe("'none'");
    expect(directives().get('script-src')).toBe("'self'");
    expect(pagePolicy['Content-Security-Policy']).not.toContain('unsafe-eval');
  });

  test('lets the page talk to its own origin only', () => {
    expect(directives().get('connect-src')).toBe("'self'");
    expect(pagePolicy['Content-Security-Policy']).not.toMatch(/https?:|wss?:|\*/);
  });

  // These do not fall back to default-src: each must be said. Source: W3C Content Security Policy Level 3, section 6.1 ff.
  test.each(['base-uri', 'form-action', 'frame-ancestors'])('closes %s, which default-src does not reach', (name) => {
    expect(directives().get(name)).toBe("'none'");
  });

  test('forbids guessing of types, referrers, frames and other origins', () => {
    expect(pagePolicy).toMatchObject({
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      'X-Frame-Options': 'DENY',
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Resource-Policy': 'same-origin',
    });
  });

  test('switches devices off, but leaves copying a chart alone', () => {
    expect(pagePolicy['Permissions-Policy']).toContain('camera=()');
    expect(pagePolicy['Permissions-Policy']).toContain('geolocation=()');
    expect(pagePolicy['Permissions-Policy']).not.toContain('clipboard-write');
  });

  test('is made of headers that can be sent', () => {
    expect([...new Headers({ ...pagePolicy })].length).toBe(Object.keys(pagePolicy).length);
  });
});
