import { phrase } from '#core/words/phrase.ts';

export const words = {
  closest: phrase`Which jar comes closest`,
  late: phrase`These wishes were said or changed after a tasting’s codes had been seen. That is no fault; but whoever has seen which jar scored what may, without meaning to, wish for the winner.`,
  noneFits: phrase`None of the levels meets every wish at least a little. Look at the wish that rules them out.`,
  judging: phrase`Drawing the panel again and again…`,
  table: phrase`The levels as a table`,
} as const;
