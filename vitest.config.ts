import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/e2e/**', 'tests/bench/**', 'node_modules/**', 'dist/**'],
    environment: 'node',
    pool: 'forks',
    testTimeout: 30_000,
  },
});
