import { phrase } from '#core/words/phrase.ts';
import type { TermEntry } from './term-entry.ts';

/** Words of the question, and of those who taste to answer it. */
export const panelTermWords = {
  trial: {
    forms: phrase`trial|trials`,
    meaning: phrase`A set of jars that differ in one thing, to answer one question.`,
  },
  factor: {
    forms: phrase`factor|factors|one thing that moves|one thing moves|what moves`,
    meaning: phrase`The one thing that differs between the jars of a trial.`,
  },
  level: {
    forms: phrase`level|levels`,
    meaning: phrase`One setting of what differs between the jars: 2 days, 60 g, frozen.`,
  },
  control: {
    forms: phrase`control|controls`,
    meaning: phrase`The level that the others are compared with: usually how you make it now.`,
  },
  replicate: {
    forms: phrase`replicate|replicates|jars of each|one jar of each|jars of each level`,
    meaning: phrase`A second jar of the same level: it shows how far jars differ by themselves.`,
  },
  panel: { forms: phrase`panel|panels`, meaning: phrase`Those who taste together, blind.` },
  taster: { forms: phrase`taster|tasters`, meaning: phrase`Somebody who tastes and answers for themselves.` },
  tasting: {
    forms: phrase`tasting|tastings`,
    meaning: phrase`One sitting where a panel scores or orders the samples.`,
  },
  sitting: {
    forms: phrase`sitting|sittings`,
    meaning: phrase`One time at the table; many cups are spread over several, as the tongue tires.`,
  },
  blind: { forms: phrase`blind|`, meaning: phrase`Nobody who tastes knows which jar is in which cup.` },
  blindCode: {
    forms: phrase`blind code|blind codes|code|codes`,
    meaning: phrase`Three digits on a cup, so that nobody knows which jar it is.`,
  },
  reveal: {
    forms: phrase`reveal|revealed`,
    meaning: phrase`Saying which code was which jar; from then on nobody can taste them blind.`,
  },
  servingOrder: {
    forms: phrase`serving order|serving orders`,
    meaning: phrase`Who drinks which cup when; balanced, because the first cup always tastes stronger.`,
  },
  sample: {
    forms: phrase`sample|samples`,
    meaning: phrase`What is poured from one jar into cups under one blind code.`,
  },
  attribute: {
    forms: phrase`attribute|attributes|what is scored`,
    meaning: phrase`What is scored: tang, fizz, sweetness, liking.`,
  },
  liking: { forms: phrase`liking|`, meaning: phrase`How much a taster enjoys it, whatever the reason.` },
  score: { forms: phrase`score|scores|scored`, meaning: phrase`A taster’s digit for one attribute of one cup.` },
  scale: {
    forms: phrase`scale|scales`,
    meaning: phrase`The digits that a score may be, and what its two ends mean.`,
  },
  remark: { forms: phrase`remark|remarks|a word on it`, meaning: phrase`What a taster says of a cup in words.` },
  sip: {
    forms: phrase`sip|sips`,
    meaning: phrase`Your own taste of one jar, knowing which it is. Never counted with a panel.`,
  },
  justAboutRight: {
    forms: phrase`just about right|just right`,
    meaning: phrase`Asked in steps from “much too little” to “much too much”, with “just right” between.`,
  },
  penalty: {
    forms: phrase`penalty|penalties|liking lost|liking where too little|liking where too much`,
    meaning: phrase`How much less those like a drink who find it too little or too much of something.`,
  },
  ranked: {
    forms: phrase`ranked tasting|put in order|put the samples in order`,
    meaning: phrase`Each taster sets the cups in order, best first, and gives no scores.`,
  },
  tellingApart: {
    forms: phrase`telling two jars apart|telling apart`,
    meaning: phrase`Finding out whether anybody notices a difference at all, before asking which is better.`,
  },
  triangle: {
    forms: phrase`odd one out|triangle test`,
    meaning: phrase`Triangle test: three cups, two of them the same; which is the odd one?`,
  },
  duoTrio: {
    forms: phrase`find the match|duo-trio test`,
    meaning: phrase`Duo-trio test: a known cup first, then two; which of them is the same?`,
  },
  paired: {
    forms: phrase`which is more?|paired test`,
    meaning: phrase`Paired test: two cups; which is sweeter, or tangier, or fizzier?`,
  },
  reference: { forms: phrase`reference|`, meaning: phrase`The known cup that the others are held against.` },
  round: { forms: phrase`rounds|`, meaning: phrase`One tray of cups for one taster, and one answer.` },
  wish: {
    forms: phrase`wish|wishes|what is wanted`,
    meaning: phrase`How an attribute should be, said before the tasting.`,
  },
  closest: {
    forms: phrase`comes closest|closest`,
    meaning: phrase`The level whose scores lie nearest to what was wished.`,
  },
  sight: {
    forms: phrase`this panel can see|the panel can see|the panel will see|your panel will be able to see|what it can show|chance to see a gap|chance to see it`,
    meaning: phrase`How small a difference would most likely show with this many tasters.`,
  },
  gap: { forms: phrase`gap|gaps`, meaning: phrase`How far two samples lie apart, in points of the scale.` },
  finding: { forms: phrase`finding|findings`, meaning: phrase`What a tasting says, with its doubt.` },
  setAside: {
    forms: phrase`set aside|`,
    meaning: phrase`A taster’s answers are left out of the count, and the reason stands beside.`,
  },
} as const satisfies Readonly<Record<string, TermEntry>>;
