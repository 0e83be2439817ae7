import { describe, expect, test } from 'vitest';
import { isPageAddress, pageAddress } from '#hosts/ipc/page-address.ts';

describe('isPageAddress', () => {
  test.each([pageAddress, 'app://sidejar/trials/3?x#y', 'APP://sidejar/'])('%s is the page', (address) => {
    expect(isPageAddress(address)).toBe(true);
  });

  test.each([
    'https://sidejar/',
    'app://sidejar.example/',
    'app://other/',
    'app://sidejar:80/',
    'app://sidejar@other/',
    'app://user@sidejar/',
    'app:sidejar',
    'app:///sidejar',
    'file:///sidejar/',
    'about:blank',
    'javascript:app://sidejar/',
    'null',
    '',
  ])('%s is not', (address) => {
    expect(isPageAddress(address)).toBe(false);
  });
});
