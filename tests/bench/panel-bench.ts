// What the panel statistics cost, as ratios that hold on any machine: against plain passes over the same numbers, and, where R with
// lmerTest is installed, against lmer on the same panel. Run: node tests/bench/panel-bench.ts
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { analysePanel } from '#core/panel/analyse.ts';
import type { ScoreColumns } from '#core/panel/model/cell-table.ts';
import { fitPanel } from '#core/panel/model/fit-panel.ts';

function panel(tasters: number, samples: number, scores: number, balanced: boolean): ScoreColumns {
  const random = seededRandom(5);
  const taster = new Int32Array(scores);
  const sample = new Int32Array(scores);
  const score = new Float64Array(scores);
  const own = Float64Array.from({ length: tasters }, () => 2 * random.uniform());
  const cell = Float64Array.from({ length: tasters * samples }, () => random.uniform());
  for (let index = 0; index < scores; index += 1) {
    const t = balanced ? index % tasters : random.below(tasters);
    const s = balanced ? Math.floor(index / tasters) % samples : random.below(samples);
    taster[index] = t;
    sample[index] = s;
    score[index] = 5 + 0.05 * s + (own[t] ?? 0) + (cell[t * samples + s] ?? 0) + 2 * random.uniform();
  }
  return { tasters, samples, taster, sample, score };
}

/** Collects what is no longer held, so that what a run takes can be told. */
setFlagsFromString('--expose-gc');
const collect: () => void = runInNewContext('gc');

/** Milliseconds of the fastest of several runs. */
function fastest(runs: number, work: () => unknown): number {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

function plainPass({ score }: ScoreColumns): number {
  let sum = 0;
  for (let index = 0; index < score.length; index += 1) sum += score[index] as number;
  return sum;
}

for (const scores of [100_000, 1_000_000]) {
  for (const [name, balanced] of [
    ['balanced', true],
    ['random counts', false],
  ] as const) {
    const columns = panel(500, 20, scores, balanced);
    const pass = fastest(15, () => plainPass(columns));
    collect();
    const before = process.memoryUsage();
    const first = fastest(1, () => fitPanel(columns));
    const after = process.memoryUsage();
    const fit = fastest(9, () => fitPanel(columns));
    const own = 8 * scores;
    const grown = (after.heapUsed + after.arrayBuffers - before.heapUsed - before.arrayBuffers) / own;
    console.log(
      `${scores.toLocaleString('en')} scores (20 samples, 500 tasters, ${name}): fit and test ${fit.toFixed(1)} ms (first run ${first.toFixed(1)}), a plain pass ${pass.toFixed(2)} ms: ${(fit / pass).toFixed(1)} passes`,
    );
    const aim = scores === 1_000_000 ? ' (aim: under 100)' : '';
    console.log(
      `  beyond ten passes: ${(fit - 10 * pass).toFixed(1)} ms${aim}; memory grown by ${grown.toFixed(2)} × the scores (aim: at most 3)`,
    );
  }
}

const random = seededRandom(8);
const attributes = ['tang', 'fizz', 'sweetness', 'liking', 'body', 'fruit', 'bitterness', 'finish'];
const tasting = Array.from({ length: 12 * 8 * 8 }, (_, index) => ({
  taster: `t${index % 12}`,
  sample: `s${Math.floor(index / 12) % 8}`,
  attribute: attributes[Math.floor(index / 96)] ?? '',
  score: random.below(10),
}));
const levels = Object.fromEntries(Array.from({ length: 8 }, (_, place) => [`s${place}`, place]));
console.log(
  `12 tasters × 8 samples × 8 attributes, everything with levels and control: first ${fastest(1, () => analysePanel({ scores: tasting, control: 's0', levels })).toFixed(1)} ms, then ${fastest(15, () => analysePanel({ scores: tasting, control: 's0', levels })).toFixed(1)} ms (aim: at most 30)`,
);

const hundred = panel(500, 20, 100_000, false);
const ours = fastest(7, () => fitPanel(hundred));
const folder = mkdtempSync(join(tmpdir(), 'panel-bench-'));
const lines = Array.from(hundred.score, (score, index) => `${hundred.taster[index]},${hundred.sample[index]},${score}`);
writeFileSync(join(folder, 'scores.csv'), `t,s,y\n${lines.join('\n')}\n`);
const script = `suppressPackageStartupMessages(library(lmerTest)); d <- read.csv('scores.csv'); d$t <- factor(d$t); d$s <- factor(d$s)
a <- system.time({ m <- lmer(y ~ s + (1 | t) + (1 | t:s), d) })[['elapsed']]; b <- system.time(v <- anova(m))[['elapsed']]
cat(a, b, v[['F value']], v[['DenDF']])`;
const answer = spawnSync('Rscript', ['-e', script], { cwd: folder, encoding: 'utf8' });
rmSync(folder, { recursive: true });
const [lmer = Number.NaN, anova = Number.NaN, f, df] = (answer.stdout ?? '').trim().split(' ').map(Number);
if (answer.status === 0 && Number.isFinite(lmer)) {
  const test = fitPanel(hundred)?.test;
  console.log(
    `100,000 scores: ours ${ours.toFixed(1)} ms (fit and test); lmer ${lmer} s, its test ${anova} s: ${((1000 * lmer) / ours).toFixed(0)} × and ${((1000 * (lmer + anova)) / ours).toFixed(0)} × (aim: 200)`,
  );
  console.log(
    `  the same answer: F ${test?.f.toFixed(6)} and ${f?.toFixed(6)}, df ${test?.dfError.toFixed(2)} and ${df?.toFixed(2)}`,
  );
} else {
  console.log(
    `100,000 scores: ours ${ours.toFixed(1)} ms; R with lmerTest is not installed here, nothing to compare with`,
  );
}
