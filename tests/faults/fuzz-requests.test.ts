import { expect, it } from 'vitest';
import type { Envelope } from '#shared/failure.ts';
import { envelopeProblem } from './requests/envelope-problem.ts';
import { fuzzRow } from './requests/fuzz-row.ts';

it('twenty thousand made-up requests settle as the contract says, and none that is refused or only reads has written', async () => {
  const row = await fuzzRow(20_000, 1);
  expect(row.problems.slice(0, 20)).toEqual([]);
  expect(row).toMatchObject({ tries: 20_000, survived: 20_000, lost: 0 });
  // Both must be many, or the requests were too good or too bad to try anything.
  const [answered = 0, refused = 0] = (row.note.match(/\d+/g) ?? []).map(Number);
  expect(answered).toBeGreaterThan(3000);
  expect(refused).toBeGreaterThan(3000);
}, 600_000);

it('would notice an envelope that is none', () => {
  const bad: unknown[] = [
    { ok: true, value: 1, more: 2 },
    { ok: false, error: { code: 'tea', message: 'x' } },
    { ok: false, error: { code: 'internal', message: 'x' } },
    { ok: false, error: { code: 'refused', message: ' ' } },
    { ok: false, error: { code: 'refused', message: 'Error at desk.ts:12' } },
    { ok: false, error: { code: 'refused', message: 'x', path: 'a' } },
    { ok: false, error: { code: 'invalid-input', message: 'x' } },
  ];
  for (const envelope of bad) expect(envelopeProblem(envelope as Envelope<unknown>)).not.toBeNull();
  expect(envelopeProblem({ ok: false, error: { code: 'invalid-input', message: 'x', path: [] } })).toBeNull();
});
