import { runTool } from './run-tool.ts';

// Style by Biome, then the doors between the rooms.

export const lintSteps = [
  { title: 'Biome', args: ['@biomejs/biome/bin/biome', 'check', '.'] },
  {
    title: 'doors between the rooms',
    args: [
      'dependency-cruiser/bin/dependency-cruiser.mjs',
      '--config',
      '.dependency-cruiser.cjs',
      '--output-type',
      'err-long',
      'core',
      'shared',
      'electron',
      'renderer',
      'scripts',
      'tests',
    ],
  },
] as const;

if (import.meta.main) {
  let failed = 0;
  for (const { args } of lintSteps) if ((await runTool(args)) !== 0) failed += 1;
  process.exit(failed === 0 ? 0 : 1);
}
