import { shelfBench } from './shelf-bench.ts';
import { startUpBench } from './start-up-bench.ts';
import { tenYearsBench } from './ten-years-bench.ts';

// npm run bench: every ratio in one run. Nothing here is asserted; the figures are for reading.

await startUpBench();
await tenYearsBench();
await shelfBench();
await import('./panel-bench.ts');
await import('./ferment-bench.ts');
