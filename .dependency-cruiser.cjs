// The doors between the rooms. Each rule's comment is what a person reads when the lint stops them: it names the right door.
const doors = require('./scripts/doors.cjs');

module.exports = {
  forbidden: [
    {
      name: 'no-cycles',
      severity: 'error',
      comment: 'Two files that need each other are one idea: move what they share into a third file.',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-unresolved',
      severity: 'error',
      comment: 'This import leads nowhere: check the path, or add the package to package.json with its exact version.',
      from: {},
      to: { couldNotResolve: true },
    },
    ...doors.rules,
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(dist|out)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'node', 'default'] },
    moduleSystems: ['es6', 'cjs'],
  },
};
