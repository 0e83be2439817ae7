import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`What changed, and when`,
  lead: phrase`Everything that was ever done here, the newest first. One kitchen keeps one history: it says what and when, not who.`,
  gone: phrase`This is not known here`,
  goneLine: phrase`No such thing stands in this kitchen, nor ever did.`,
  toStart: phrase`Go to Today`,
  removed: phrase`Removed. It lay in the bin from here on.`,
  erased: phrase`Erased for good: what stood here can no longer be read.`,
  unchanged: phrase`Nothing that is shown here changed.`,
  nothing: phrase`nothing`,
  became: phrase`became`,
  another: phrase`another one`,
  yes: phrase`yes`,
  no: phrase`no`,
  undone: phrase`later undone`,
  more: phrase`Show earlier changes`,
  onlyLatest: (count: number) => phrase`Only its latest ${count} changes are shown.`,
  veiled: phrase`Its history tells which jar is behind which code. It can be read here once the cups are revealed.`,
  notHere: phrase`It was removed. What can come back lies in the bin, on Data.`,
  parts: phrase`What belongs to it`,
  partsLine: phrase`Each leads to its own history.`,
  partsOf: (many: string, rows: string) => `${many} (${rows})`,
  moreParts: phrase`Show more of them`,
} as const;

export const stepWords = {
  data: phrase`Data`,
  lead: (when: string, rows: string) => phrase`${when}; ${rows}. Each leads to its whole history.`,
  gone: phrase`This step is not known here`,
  goneLine: phrase`No such step stands in this kitchen’s log.`,
  toData: phrase`Go to Data`,
  list: phrase`What this step changed`,
  noRows: phrase`This step changed no rows.`,
  withheld: (rows: number, shown: string) =>
    rows === 1
      ? phrase`${shown} row of it would tell which jar is behind which code. It can be read once the cups are revealed.`
      : phrase`${shown} rows of it would tell which jar is behind which code. They can be read once the cups are revealed.`,
  more: phrase`Show the next of them`,
  isGone: phrase`removed since`,
} as const;

/** The parts of what a trial holds the same and of what goes into a jar. */
export const partNames: Readonly<Record<string, string>> = {
  additions: phrase`additions`,
  also: phrase`also`,
  'as written': phrase`as written`,
  base: phrase`base`,
  cover: phrase`cover`,
  days: phrase`days`,
  mass: phrase`mass`,
  state: phrase`state`,
  temperature: phrase`temperature`,
  volume: phrase`volume`,
};
