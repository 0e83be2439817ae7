import type { NeedKind } from '#core/trial/need.ts';
import type { snoozeSpans } from '#shared/closed-lists.ts';

interface NeedWords {
  /** What is to be done, of what. */
  readonly title: (what: string) => string;
  /** The button that says it is done. */
  readonly act: (count: number) => string;
  readonly done: (what: string) => string;
}

const all = (one: string, many: string) => (count: number) => (count === 1 ? `${one} it` : `${many} all ${count}`);

export const needWords: Readonly<Record<NeedKind, NeedWords>> = {
  start: { title: (what) => `Start ${what}`, act: all('Started', 'Started'), done: (what) => `Started ${what}.` },
  look: {
    title: (what) => `Look at ${what}`,
    act: () => 'Looked: nothing new',
    done: (what) => `Looked at ${what}: nothing new.`,
  },
  stir: { title: (what) => `Stir ${what}`, act: all('Stirred', 'Stirred'), done: (what) => `Stirred ${what}.` },
  pull: { title: (what) => `Pull ${what}`, act: all('Pulled', 'Pulled'), done: (what) => `Pulled ${what}.` },
  taste: { title: (what) => `Taste ${what}`, act: () => 'Go and taste', done: (what) => `Tasted ${what}.` },
  strain: { title: (what) => `Strain ${what}`, act: all('Strained', 'Strained'), done: (what) => `Strained ${what}.` },
  feed: { title: (what) => `Feed ${what}`, act: all('Fed', 'Fed'), done: (what) => `Fed ${what}.` },
};

export const spanWordsOf: Readonly<Record<(typeof snoozeSpans)[number], string>> = {
  hour: '1 hour',
  tonight: 'Tonight',
  tomorrow: 'Tomorrow',
};

export const words = {
  title: 'Today',
  overdue: 'Overdue',
  today: 'Due today',
  later: 'Coming up',
  snoozed: 'Put off',
  shelf: 'On the shelf',
  nothingDue: 'Nothing is due now.',
  next: (what: string, at: string) => `Next: ${what}, ${at}.`,
  toBottles: 'Bottles',
  bottles: (count: number) => (count === 1 ? '1 bottle waits to be tried' : `${count} bottles wait to be tried`),
  openOne: 'Open one to try',
  empty: {
    title: 'Your shelf is empty',
    lines: [
      'A trial splits one base into jars and changes one thing in each. Here you see which jar is due, and when.',
      'New here? The sample kitchen shows a whole trial, from base to house recipe. It can be taken out again at any time.',
    ],
  },
  idle: {
    title: 'No jar is standing',
    line: 'All trials are tasted or not planned yet. What do you want to know next?',
  },
  late: (span: string) => `${span} late`,
  until: (at: string) => `until ${at}`,
  planTrial: 'Plan a trial',
  lookAtTrials: 'Look at the trials',
  later_: 'Later…',
  laterFor: (what: string) => `Later… ${what}`,
  putOff: (what: string, at: string) => `${what}: put off until ${at}.`,
  why: 'Why (may stay empty)',
  forHowLong: 'Put it off',
  wake: 'Bring back now',
  woken: (what: string) => `${what} is back.`,
  writeDown: 'Write down a reading:',
  writeDownOf: (label: string) => `Reading of jar ${label}`,
  openJar: (label: string) => `Open jar ${label} to note what you see`,
} as const;
