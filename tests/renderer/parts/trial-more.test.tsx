// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, it } from 'vitest';
import { TrialMore } from '#renderer/parts/trial-more/trial-more.tsx';
import { pageOver } from '../page-over.tsx';
import { standInBridge } from '../stand-in-bridge.ts';

afterEach(cleanup);

it('TrialMore asks the question that fits the trial, and leads to the wishes and the test', () => {
  pageOver(standInBridge(), <TrialMore trial="7" factor="state" />);
  const to = (name: string) => screen.getByRole('link', { name }).getAttribute('href');
  expect(to('What is wanted')).toBe('/trials/7/wishes');
  expect(to('Is frozen really different from fresh?')).toBe('/trials/7/telling-apart');
  cleanup();
  pageOver(standInBridge(), <TrialMore trial="7" factor="days" />);
  expect(screen.getByRole('link', { name: 'Do two of these jars really taste different?' })).toBeTruthy();
});
