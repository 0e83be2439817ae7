import type { NeedKind } from '#core/trial/need.ts';
import { phrase } from '#core/words/phrase.ts';
import type { putOffSpans } from '#shared/closed-lists.ts';

interface NeedWords {
  /** What is to be done, of what. */
  readonly title: (what: string) => string;
  /** The button that says it is done. */
  readonly act: (count: number) => string;
  readonly done: (what: string) => string;
}

export const needWords: Readonly<Record<NeedKind, NeedWords>> = {
  start: {
    title: (what) => phrase`Start ${what}`,
    act: (count) => (count === 1 ? phrase`Started it` : phrase`Started all ${count}`),
    done: (what) => phrase`Started ${what}.`,
  },
  look: {
    title: (what) => phrase`Look at ${what}`,
    act: () => phrase`Looked: nothing new`,
    done: (what) => phrase`Looked at ${what}: nothing new.`,
  },
  stir: {
    title: (what) => phrase`Stir ${what}`,
    act: (count) => (count === 1 ? phrase`Stirred it` : phrase`Stirred all ${count}`),
    done: (what) => phrase`Stirred ${what}.`,
  },
  pull: {
    title: (what) => phrase`Pull ${what}`,
    act: (count) => (count === 1 ? phrase`Pulled it` : phrase`Pulled all ${count}`),
    done: (what) => phrase`Pulled ${what}.`,
  },
  taste: {
    title: (what) => phrase`Taste ${what}`,
    act: () => phrase`Go and taste`,
    done: (what) => phrase`Tasted ${what}.`,
  },
  strain: {
    title: (what) => phrase`Strain ${what}`,
    act: (count) => (count === 1 ? phrase`Strained it` : phrase`Strained all ${count}`),
    done: (what) => phrase`Strained ${what}.`,
  },
  feed: {
    title: (what) => phrase`Feed ${what}`,
    act: (count) => (count === 1 ? phrase`Fed it` : phrase`Fed all ${count}`),
    done: (what) => phrase`Fed ${what}.`,
  },
};

export const spanWordsOf: Readonly<Record<(typeof putOffSpans)[number], string>> = {
  hour: phrase`1 hour`,
  tonight: phrase`Tonight`,
  tomorrow: phrase`Tomorrow`,
};

export const words = {
  title: phrase`Today`,
  overdue: phrase`Overdue`,
  today: phrase`Due today`,
  later: phrase`Coming up`,
  putOffTitle: phrase`Put off`,
  shelf: phrase`On the shelf`,
  nothingDue: phrase`Nothing is due now.`,
  next: (what: string, at: string) => phrase`Next: ${what}, ${at}.`,
  toBottles: phrase`Bottles`,
  bottles: (count: number) =>
    count === 1 ? phrase`1 bottle waits to be tried` : phrase`${count} bottles wait to be tried`,
  openOne: phrase`Open one to try`,
  empty: {
    title: phrase`Your shelf is empty`,
    lines: [
      phrase`A trial splits one base into jars and changes one thing in each. Here you see which jar is due, and when.`,
      phrase`New here? The sample kitchen shows a whole trial, from base to house recipe. It can be taken out again at any time.`,
    ],
  },
  idle: {
    title: phrase`No jar is standing`,
    line: phrase`All trials are tasted or not planned yet. What do you want to know next?`,
  },
  late: (span: string) => phrase`${span} late`,
  until: (at: string) => phrase`until ${at}`,
  planTrial: phrase`Plan a trial`,
  lookAtTrials: phrase`Look at the trials`,
  later_: phrase`Later…`,
  laterFor: (what: string) => phrase`Later… ${what}`,
  putOff: (what: string, at: string) => phrase`${what}: put off until ${at}.`,
  why: phrase`Why (may stay empty)`,
  forHowLong: phrase`Put it off`,
  wake: phrase`Bring back now`,
  woken: (what: string) => phrase`${what} is back.`,
  writeDown: phrase`Write down a reading:`,
  writeDownOf: (label: string) => phrase`Reading of jar ${label}`,
  openJar: (label: string) => phrase`Open jar ${label} to note what you see`,
} as const;
