import { counted, joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

export type Method = ValueOf<'discriminations:list'>['discriminations'][number]['method'];
/** The three ways to serve; a pair is one-sided or two-sided by what is expected. */
export type Way = 'triangle' | 'duo-trio' | 'paired';

export const wayWords: Readonly<Record<Way, { readonly title: string; readonly task: string; readonly when: string }>> =
  {
    triangle: {
      title: 'Odd one out',
      task: 'Three cups, two are the same: which is the odd one?',
      when: 'When you can’t say in what way they might differ. Also called a triangle test.',
    },
    'duo-trio': {
      title: 'Find the match',
      task: 'A reference first, then two cups: which is the same as the reference?',
      when: 'When one jar is the drink that everybody knows. Also called a duo-trio test.',
    },
    paired: {
      title: 'Which is more?',
      task: 'Two cups: which is sweeter, or tangier, or fizzier?',
      when: 'When you know what to ask for. It needs the fewest answers. Also called a paired test.',
    },
  };

export function wayOf(method: Method): Way {
  return method === 'paired-two-sided' ? 'paired' : method;
}

/** What a taster is told with the tray in front of them. */
export function taskWords(method: Method, asked: string | null): string {
  switch (method) {
    case 'triangle':
      return 'Taste from left to right. Two of the three cups are the same: which is the odd one?';
    case 'duo-trio':
      return 'Taste the reference first, then the two cups: which of them is the same as the reference?';
    default:
      return `Taste from left to right: which cup is ${asked ?? 'more'}?`;
  }
}

export const words = {
  title: 'Telling two jars apart',
  lead: 'Serve the same two jars blind, again and again, and count who finds the difference. Guessing alone gets some right: what counts is how many more.',
  before: 'Tests of this trial',
  setUp: 'Set up a test',
  noJars: 'Two started jars are needed. Start the jars of this trial first.',
  noTasters: 'Nobody tastes in this kitchen yet.',
  addTasters: 'Add tasters',
  way: 'How to serve',
  jars: 'The two jars',
  first: 'One jar',
  second: 'The other jar',
  asked: 'Which cup is …?',
  askedHint: 'One word, such as sweeter or fizzier',
  expectation: 'What do you expect?',
  noExpectation: 'Either could be',
  expects: (label: string) => `Jar ${label}`,
  expectationHint: 'If you name a jar, only answers for that jar count. Say it now: not after the answers.',
  tasters: 'Who tastes',
  allTasters: 'Choose all',
  rounds: 'Rounds for each taster',
  roundsHint: 'Rest and rinse between rounds. After four or so the tongue tires.',
  name: 'Name of the test',
  nameHint: 'Tasters may see it: leave out which jars it is about.',
  build: 'Set it up',
  built: 'The test is set up. The cups’ codes are drawn.',
  canShow: 'What it can show',
  sizes: { slight: 'slight', clear: 'clear', large: 'large' },
  open: 'open, blind',
  closed: 'closed, revealed',
  trial: 'The trial',
  allTests: 'Tests of this trial',
  answers: 'The answers',
  keys: (cups: number) =>
    `By keyboard: 1 to ${cups} chooses a cup, Enter goes on to the next tray, Backspace takes an answer back.`,
  reference: 'Reference',
  takeBack: 'Take back',
  round: (round: number) => `round ${round}`,
  pouring: 'Pouring list',
  pouringLine:
    'For whoever pours, out of the tasters’ sight: it says which jar goes into which cup. Whoever has seen it should not answer.',
  showPouring: 'Open the pouring list',
  hidePouring: 'Put the pouring list away',
  tray: 'Tray',
  cup: (place: number) => `Cup ${place}`,
  poured: (code: string, jar: string) => `${code}: jar ${jar}`,
  reveal: 'Close and reveal',
  revealLine: 'When the last tray has come back, close the test. Only then it says which jar was in which cup.',
  revealFirst: 'Write down at least one answer first.',
  revealTitle: 'Reveal the cups?',
  revealForGood: 'Nobody can taste blind again afterwards: this can’t be undone.',
  revealYes: 'Reveal them',
  revealNo: 'Not yet',
  remove: 'Remove this test',
  removed: (name: string) => `“${name}” is in the bin.`,
  found: 'What they found',
  nobody: 'The test was closed without an answer.',
  figures: 'How large is the difference?',
  revealed: 'Every answer, with what was in the cups',
  again: 'Set up another test',
} as const;

export function answeredWords(answered: number, all: number): string {
  return `${answered} of ${counted(all, 'answer')} in`;
}

export function missingWords(answered: number, all: number): string {
  const missing = all - answered;
  if (missing === 0) return `All ${counted(all, 'answer')} are in.`;
  return `${answeredWords(answered, all)}; ${missing} ${missing === 1 ? 'is' : 'are'} missing and will be left out.`;
}

/** What one or two people can tell, and what not. */
export function fewTastersWords(tasters: number): string | null {
  if (tasters === 1) {
    return 'One taster can find out whether they themselves can tell the jars apart, given enough rounds. Whether anybody else would notice stays open.';
  }
  if (tasters === 2) {
    return 'Two tasters can find out whether the two of them can tell the jars apart, given enough rounds. Whether other people would notice stays open.';
  }
  return null;
}

export function testName(way: Way, day: string): string {
  return `${wayWords[way].title}, ${day}`;
}

/** "Jar A (fresh), jar C (frozen)". */
export function jarsWords(jars: readonly { readonly label: string; readonly level: string }[]): string {
  return joined(jars.map(({ label, level }) => `jar ${label} (${level})`));
}
