import type { FaultRow } from '../fault-row.ts';
import { fuzzRequests } from './fuzz-requests.ts';

/**
 * Made-up requests as one line of the table.
 *
 * @param tries a million takes about half an hour of one core
 */
export async function fuzzRow(tries: number, seed: number): Promise<FaultRow> {
  const begun = performance.now();
  const run = await fuzzRequests({ tries, seed });
  const took_s = Math.round((performance.now() - begun) / 1000);
  const lost = new Set(run.problems.map((problem) => problem.split(' ')[0])).size;
  return {
    fault: 'made-up requests: valid, spoilt and junk',
    tries,
    survived: tries - lost,
    lost,
    note: `${run.answered} answered, ${run.refused} refused with nothing written, ${run.stopped} stopped; the slowest, ${run.slowest.name}, took ${Math.round(run.slowest.cpu_ms)} ms; ${took_s} s in all`,
    problems: run.problems,
  };
}
