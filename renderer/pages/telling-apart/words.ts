import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';
import { joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

export type Method = ValueOf<'discriminations:list'>['discriminations'][number]['method'];
/** The three ways to serve; a pair is one-sided or two-sided by what is expected. */
export type Way = 'triangle' | 'duo-trio' | 'paired';

export const wayWords: Readonly<Record<Way, { readonly title: string; readonly task: string; readonly when: string }>> =
  {
    triangle: {
      title: phrase`Odd one out`,
      task: phrase`Three cups, two are the same: which is the odd one?`,
      when: phrase`When you can’t say in what way they might differ. Also called a triangle test.`,
    },
    'duo-trio': {
      title: phrase`Find the match`,
      task: phrase`A reference first, then two cups: which is the same as the reference?`,
      when: phrase`When one jar is the drink that everybody knows. Also called a duo-trio test.`,
    },
    paired: {
      title: phrase`Which is more?`,
      task: phrase`Two cups: which is sweeter, or tangier, or fizzier?`,
      when: phrase`When you know what to ask for. It needs the fewest answers. Also called a paired test.`,
    },
  };

export function wayOf(method: Method): Way {
  return method === 'paired-two-sided' ? 'paired' : method;
}

/** What a taster is told with the tray in front of them. */
export function taskWords(method: Method, asked: string | null): string {
  switch (method) {
    case 'triangle':
      return phrase`Taste from left to right. Two of the three cups are the same: which is the odd one?`;
    case 'duo-trio':
      return phrase`Taste the reference first, then the two cups: which of them is the same as the reference?`;
    default:
      return phrase`Taste from left to right: which cup is ${asked ?? phrase`more`}?`;
  }
}

export const words = {
  title: phrase`Telling two jars apart`,
  lead: phrase`Serve the same two jars blind, again and again, and count who finds the difference. Guessing alone gets some right: what counts is how many more.`,
  before: phrase`Tests of this trial`,
  setUp: phrase`Set up a test`,
  noJars: phrase`Two started jars are needed. Start the jars of this trial first.`,
  noTasters: phrase`Nobody tastes in this kitchen yet.`,
  addTasters: phrase`Add tasters`,
  way: phrase`How to serve`,
  jars: phrase`The two jars`,
  first: phrase`One jar`,
  second: phrase`The other jar`,
  asked: phrase`Which cup is …?`,
  askedHint: phrase`One word, such as sweeter or fizzier`,
  expectation: phrase`What do you expect?`,
  noExpectation: phrase`Either could be`,
  expects: (label: string) => phrase`Jar ${label}`,
  expectationHint: phrase`If you name a jar, only answers for that jar count. Say it now: not after the answers.`,
  tasters: phrase`Who tastes`,
  allTasters: phrase`Choose all`,
  rounds: phrase`Rounds for each taster`,
  roundsHint: phrase`Rest and rinse between rounds. After four or so the tongue tires.`,
  name: phrase`Name of the test`,
  nameHint: phrase`Tasters may see it: leave out which jars it is about.`,
  build: phrase`Set it up`,
  built: phrase`The test is set up. The cups’ codes are drawn.`,
  canShow: phrase`What it can show`,
  sizes: { slight: phrase`slight`, clear: phrase`clear`, large: phrase`large` },
  open: phrase`open, blind`,
  closed: phrase`closed, revealed`,
  trial: phrase`The trial`,
  allTests: phrase`Tests of this trial`,
  answers: phrase`The answers`,
  keys: (cups: number) =>
    phrase`By keyboard: 1 to ${cups} chooses a cup, Enter goes on to the next tray, Backspace takes an answer back.`,
  reference: phrase`Reference`,
  takeBack: phrase`Take back`,
  round: (round: number) => phrase`round ${round}`,
  pouring: phrase`Pouring list`,
  pouringLine: phrase`For whoever pours, out of the tasters’ sight: it says which jar goes into which cup. Whoever has seen it should not answer.`,
  showPouring: phrase`Open the pouring list`,
  hidePouring: phrase`Put the pouring list away`,
  tray: phrase`Tray`,
  cup: (place: number) => phrase`Cup ${place}`,
  poured: (code: string, jar: string) => phrase`${code}: jar ${jar}`,
  reveal: phrase`Close and reveal`,
  revealLine: phrase`When the last tray has come back, close the test. Only then it says which jar was in which cup.`,
  revealFirst: phrase`Write down at least one answer first.`,
  revealTitle: phrase`Reveal the cups?`,
  revealForGood: phrase`Nobody can taste blind again afterwards: this can’t be undone.`,
  revealYes: phrase`Reveal them`,
  revealNo: phrase`Not yet`,
  remove: phrase`Remove this test`,
  removed: (name: string) => phrase`“${name}” is in the bin.`,
  found: phrase`What they found`,
  nobody: phrase`The test was closed without an answer.`,
  figures: phrase`How large is the difference?`,
  revealed: phrase`Every answer, with what was in the cups`,
  again: phrase`Set up another test`,
} as const;

export function answeredWords(answered: number, all: number): string {
  return phrase`${answered} of ${counted(all, 'answer')} in`;
}

export function missingWords(answered: number, all: number): string {
  const missing = all - answered;
  if (missing === 0) return phrase`All ${counted(all, 'answer')} are in.`;
  return missing === 1
    ? phrase`${answeredWords(answered, all)}; ${missing} is missing and will be left out.`
    : phrase`${answeredWords(answered, all)}; ${missing} are missing and will be left out.`;
}

/** What one or two people can tell, and what not. */
export function fewTastersWords(tasters: number): string | null {
  if (tasters === 1) {
    return phrase`One taster can find out whether they themselves can tell the jars apart, given enough rounds. Whether anybody else would notice stays open.`;
  }
  if (tasters === 2) {
    return phrase`Two tasters can find out whether the two of them can tell the jars apart, given enough rounds. Whether other people would notice stays open.`;
  }
  return null;
}

export function testName(way: Way, day: string): string {
  return `${wayWords[way].title}, ${day}`;
}

/** "Jar A (fresh), jar C (frozen)". */
export function jarsWords(jars: readonly { readonly label: string; readonly level: string }[]): string {
  return joined(jars.map(({ label, level }) => phrase`jar ${label} (${level})`));
}
