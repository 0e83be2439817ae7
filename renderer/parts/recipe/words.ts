export const words = {
  noTarget: 'Nobody has scored this: it has no target to be held against.',
  targetTable: 'Target of each attribute',
  spreadOfPanel: 'Spread: standard deviation between the tasters. About two of three tasters lie within it.',
  targetOfSips: 'From the maker’s own last sips, not from a panel.',
  noChain: 'This version was written down without a trial.',
  cautions: 'Cautions',
  cautionsNote: 'The usual cautions. Local codes and licensed practice come first.',
  basis: 'On what it rests',
  nothingAdded: 'nothing added',
  plainBasis: {
    panel: 'Decided by a panel that tasted blind.',
    sips: 'Decided by the maker’s own sips, without a panel: one mouth, open labels.',
    none: 'Written down without any tasting: nobody’s scores stand behind it.',
  },
} as const;
