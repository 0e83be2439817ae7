import { phrase } from '#core/words/phrase.ts';
import { dayOfJar } from '#renderer/format/moments.ts';

export const words = {
  title: (label: string, level: string) => phrase`Jar ${label}: ${level}`,
  control: phrase`the control`,
  formula: phrase`What is in it`,
  nothingAdded: phrase`nothing added`,
  dates: phrase`Planned and done`,
  step: phrase`Step`,
  planned: phrase`Planned`,
  done: phrase`Done`,
  notYet: phrase`not yet`,
  due: (at: string) => phrase`not yet; due ${at}, as long after the start as planned`,
  notPlanned: '–',
  steps: { start: phrase`Started`, pull: phrase`Pulled`, strain: phrase`Strained`, discard: phrase`Discarded` },
  apart: (span: string, isLate: boolean) =>
    isLate ? phrase`${span} later than planned` : phrase`${span} earlier than planned`,
  watch: phrase`Write down`,
  watchLater: phrase`Readings and sightings begin once the jar is started.`,
  diary: phrase`Diary`,
  noEntries: phrase`Nothing written down yet.`,
  dayOf: (day: number, days: number) =>
    day > days ? phrase`Day ${day}, planned ${days}` : phrase`Day ${day} of ${days}`,
  stoodFor: (days: string, planned: string) =>
    days === planned ? phrase`Stood ${days}` : phrase`Stood ${days}, planned ${planned}`,
  sip: (scores: string) => phrase`A sip: ${scores}`,
  whenInJar: (when: string, startedAt: string | null, at: string) =>
    startedAt === null ? when : phrase`Day ${dayOfJar(startedAt, Date.parse(at))} · ${when}`,
  course: phrase`Its course`,
  sheet: phrase`What it holds and may become`,
  alcohol: phrase`Alcohol`,
  bottled: phrase`Bottled`,
  closed: phrase`Closed`,
  ifClosed: phrase`If you close it`,
  open: phrase`Open, or under a cover that lets the gas out: no pressure builds up. Before you bottle it, see what closing it would do.`,
  openJar: phrase`An open jar keeps no gas. A bottle does: what it is made for and how much sugar is left when it is closed decide about its pressure.`,
  closingSugar: phrase`Sugar left when it is closed`,
  closingHint: {
    metric: phrase`Such as 6 g/L, ${1.5} brix or ${1.006}; empty: what it has. Nothing is written down.`,
    us: phrase`Such as ${0.8} oz/gal, ${1.5} brix or ${1.006}; empty: what it has. Nothing is written down.`,
  },
  cold: phrase`A cold start`,
  reckoned: phrase`How this is reckoned`,
  cautions: phrase`The usual cautions`,
  takeOut: phrase`Take out`,
  takenOut: phrase`The reading is taken out.`,
  takeOutOf: (at: string) => phrase`Take out the reading of ${at}`,
  gone: {
    title: phrase`This jar is not here`,
    line: phrase`Its trial was taken out or undone.`,
    back: phrase`To the trials`,
  },
} as const;
