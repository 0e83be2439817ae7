import { describe, expect, it } from 'vitest';
import { requestsShowing } from '#renderer/app/what-shows-what.ts';
import { isRequestName } from '#shared/contract/all-requests.ts';
import { tables } from '#store/tables.ts';

describe('requestsShowing', () => {
  it('knows every table of the store', () => {
    const unknown = Object.keys(tables).filter((table) => requestsShowing([table]) === null);
    expect(unknown).toEqual([]);
  });

  it('names only requests of the contract', () => {
    const named = [...(requestsShowing(Object.keys(tables)) ?? [])];
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((name) => !isRequestName(name))).toEqual([]);
  });

  it('reads the trials again when a jar changed, and not the pantry', () => {
    const names = requestsShowing(['jars']);
    expect(names?.has('trials:open')).toBe(true);
    expect(names?.has('undo:state')).toBe(true);
    expect(names?.has('pantry:list')).toBe(false);
  });

  it('reads everything again when it does not know a table', () => {
    expect(requestsShowing(['jars', 'labels'])).toBeNull();
  });
});
