import { describe, expect, it } from 'vitest';
import { fuzzRequests } from './requests/fuzz-requests.ts';

describe('the desk under made-up requests', () => {
  it('settles twenty thousand of them as the contract says, and writes nothing for one it refuses', async () => {
    const run = await fuzzRequests({ tries: 20_000, seed: 1 });
    expect(run.problems.slice(0, 20)).toEqual([]);
    expect(run.tries).toBe(20_000);
    // Both must be many, or the requests were too good or too bad to try anything.
    expect(run.answered).toBeGreaterThan(4000);
    expect(run.refused).toBeGreaterThan(4000);
  }, 300_000);
});
