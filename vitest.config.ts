import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/e2e/**', 'tests/bench/**', 'node_modules/**', 'dist/**'],
    environment: 'node',
    pool: 'forks',
    // As this process was started: see scripts/run.cjs.
    execArgv: process.execArgv,
    globalSetup: 'tests/built-desk.ts',
    // A test that hangs ends; one on a busy machine may take its time.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
