import { phrase } from '#core/words/phrase.ts';

export const words = {
  noTarget: phrase`Nobody has scored this: it has no target to be held against.`,
  targetTable: phrase`Target of each attribute`,
  spreadOfPanel: phrase`Spread: standard deviation between the tasters. About two of three tasters lie within it.`,
  targetOfSips: phrase`From the maker’s own last sips, not from a panel.`,
  noChain: phrase`This version was written down without a trial.`,
  cautions: phrase`Cautions`,
  cautionsNote: phrase`The usual cautions. Local rules and licensed practice come first.`,
  basis: phrase`On what it rests`,
  nothingAdded: phrase`nothing added`,
  plainBasis: {
    panel: phrase`Decided by a panel that tasted blind.`,
    sips: phrase`Decided by the maker’s own sips, without a panel: one mouth, open labels.`,
    none: phrase`Written down without any tasting: nobody’s scores stand behind it.`,
  },
} as const;
