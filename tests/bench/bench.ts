import { startUpBench } from './start-up-bench.ts';

// npm run bench: every ratio in one run. Nothing here is asserted; the figures are for reading.

await startUpBench();
await import('./panel-bench.ts');
await import('./ferment-bench.ts');
