export const words = {
  title: 'Bases',
  lead: 'What is split into jars, and the cultures that make it.',
  bases: 'Bases',
  cultures: 'Cultures',
  startBase: 'Start a base',
  addCulture: 'Add a culture',
  strained: 'Strained it',
  strainedDone: (name: string) => `${name} is strained.`,
  bottles: 'Bottles',
  reviving: 'being woken',
  splitFrom: (name: string) => `split from ${name}`,
  emptyBases: {
    title: 'No base yet',
    line: 'A base is the plain first ferment that you split into jars. Note when it was made and how sweet it began: then its age and sugar are known when a trial asks.',
  },
  emptyCultures: 'No culture yet. Add the grains or the mother that your bases start from.',
} as const;
