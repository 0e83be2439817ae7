import { firstPaintBench } from './first-paint-bench.ts';
import { scoreKeyBench } from './score-key-bench.ts';
import { shelfBench } from './shelf-bench.ts';
import { startUpBench } from './start-up-bench.ts';
import { tenYearsBench } from './ten-years-bench.ts';

// npm run bench: every ratio in one run. Nothing here is asserted; the figures are for reading.

await startUpBench();
await firstPaintBench();
await tenYearsBench();
await shelfBench();
await scoreKeyBench();
await import('./panel-bench.ts');
await import('./ferment-bench.ts');
