import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';
import { randallScores } from './fixtures/randall-1989-table.ts';

// A real panel through the whole road, headless: trial, jars, tasting, scores:import, panel:analyse.
// Data: J. H. Randall, The analysis of sensory data by generalized linear model, Biometrical Journal 31 (1989) 781–793:
// bitterness of white wines, nine judges, two temperatures, skin contact or none, two bottles of each.
// Expected figures: base R 4.2.2, aov() and mean() on the 72 response scores.

const root = join(import.meta.dirname, '..', '..', '..');

async function sidejar<Name extends RequestName>(
  store: string,
  name: Name,
  input: AskedOf<Name>,
): Promise<ValueOf<Name>> {
  const child = spawn(process.execPath, ['electron/hosts/headless/main.ts', name, '--store', store], { cwd: root });
  let out = '';
  let err = '';
  child.stdout.on('data', (part: Buffer) => (out += part.toString()));
  child.stderr.on('data', (part: Buffer) => (err += part.toString()));
  child.stdin.end(JSON.stringify(input));
  const code = await new Promise((resolve) => child.on('close', resolve));
  if (code !== 0) throw new Error(`${name}: ${err}`);
  return JSON.parse(out) as ValueOf<Name>;
}

describe('the panel of Randall (1989), through the road', () => {
  it('gives the means and the block F test that base R gives', async () => {
    const store = join(temporaryFolder(), 'randall.sidejar');
    const cells = ['cold-no', 'cold-yes', 'warm-no', 'warm-yes'];
    const { trial, jars } = await sidejar(store, 'trials:save', {
      question: 'Temperature and skin contact?',
      factor: 'formula',
      levels: cells.map((name, index) => ({ name, days: index + 1 })),
      control: 'cold-no',
      held: { additions: [], cover: 'cloth' },
      replicates: 2,
      calendar: 'staggered-start',
      baseAvailable_mL: 8000,
      baseEach_mL: 750,
      vessel: { kind: 'crown', capacity_mL: 800 },
      start: '2026-03-01T09:00:00+01:00',
      seed: 1,
    });
    expect(jars).toHaveLength(8);
    const ids = jars.map(({ id }) => id);
    await sidejar(store, 'jars:start', { jars: ids, at: '2026-03-01T09:00:00+01:00' });
    const tasters: string[] = [];
    for (let judge = 1; judge <= 9; judge += 1) {
      tasters.push((await sidejar(store, 'tasters:save', { name: `Judge ${judge}` })).taster);
    }
    const { tasting, codes } = await sidejar(store, 'tastings:build', {
      trial,
      name: 'Bitterness',
      samples: ids.map((jar) => ({ jar })),
      tasters,
      attributes: [{ name: 'response', low: 0, high: 100 }],
    });

    // Bottles 1, 3, 5, 7 are the first of their cell, the even ones the second.
    const table = randallScores.map(({ judge, cell, bottle, response }) => {
      const jar = jars.filter(({ level }) => level === cell)[bottle - 1];
      return `Judge ${judge},${codes[jar?.id ?? '']},response,${response}`;
    });
    const imported = await sidejar(store, 'scores:import', {
      tasting,
      table: ['judge,code,attribute,score', ...table].join('\n'),
    });
    expect(imported).toEqual({ accepted: 72, refused: [] });

    await sidejar(store, 'tastings:close', { tasting });
    const { scores } = await sidejar(store, 'findings:read', { trial });
    expect(scores).toHaveLength(72);
    const averaged = tasters.flatMap((_, judge) =>
      cells.map((sample) => {
        const own = scores.filter((score) => score.taster === `Judge ${judge + 1}` && score.sample === sample);
        expect(own).toHaveLength(2);
        return {
          taster: `Judge ${judge + 1}`,
          sample,
          attribute: 'response',
          score: own.reduce((sum, { score }) => sum + score, 0) / 2,
        };
      }),
    );
    const { attributes } = await sidejar(store, 'panel:analyse', { scores: averaged });
    const [response] = attributes;
    const mean = (sample: string) => response?.means.find((each) => each.sample === sample)?.mean;
    expect(mean('cold-no')).toBeCloseTo(31.0556, 4);
    expect(mean('cold-yes')).toBeCloseTo(40.5556, 4);
    expect(mean('warm-no')).toBeCloseTo(50, 10);
    expect(response?.test?.dfSample).toBe(3);
    expect(response?.test?.dfError).toBeCloseTo(24, 9);
    expect(response?.test?.f).toBeCloseTo(25.13808756, 8);
    expect((response?.test?.p ?? 0) / 1.39197e-7).toBeCloseTo(1, 5);
    expect(response?.missing).toBe(0);
  }, 120_000);
});
