import { phrase } from '#core/words/phrase.ts';
import type { DeskLine } from '#hosts/desk-line.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Today = ValueOf<'today:read'>;
type Need = Today['needs'][number];

const minute_ms = 60_000;
/** How often the desk is asked. */
const asksEvery_ms = minute_ms;
/** At most one notification in this time; what falls due in between waits and is told together. */
const tellsEvery_ms = 15 * minute_ms;
/** So many things are named; the rest is counted. */
const mostNamed = 3;

type Words = readonly [one: (name: string) => string, many: (names: string) => string];

/** Whole sentences, for one jar and for several; and for what has a name of its own. */
const ofJars: Readonly<Partial<Record<Need['kind'], Words>>> = {
  start: [(jar) => phrase`Start jar ${jar}`, (jars) => phrase`Start jars ${jars}`],
  look: [(jar) => phrase`Look at jar ${jar}`, (jars) => phrase`Look at jars ${jars}`],
  stir: [(jar) => phrase`Stir jar ${jar}`, (jars) => phrase`Stir jars ${jars}`],
  pull: [(jar) => phrase`Pull jar ${jar}`, (jars) => phrase`Pull jars ${jars}`],
  taste: [(jar) => phrase`Taste jar ${jar}`, (jars) => phrase`Taste jars ${jars}`],
};
const ofOthers: Readonly<Partial<Record<Need['kind'], (name: string) => string>>> = {
  taste: (tasting) => phrase`Taste ${tasting}`,
  strain: (base) => phrase`Strain ${base}`,
  feed: (culture) => phrase`Feed ${culture}`,
};

/** A notification's head and body. */
export interface DueWords {
  readonly title: string;
  readonly body: string;
}

function lineOf({ kind, jars, base, culture, tasting }: Need): string {
  const names = jars.map(({ name }) => name).join(', ');
  const words = jars.length > 0 ? ofJars[kind]?.[jars.length === 1 ? 0 : 1] : ofOthers[kind];
  const name = jars.length > 0 ? names : ((base ?? culture ?? tasting)?.name ?? '');
  return words?.(name) ?? name;
}

/** Each thing that is due by now, under a name that stays the same however the things are grouped. */
function marksOf({ kind, jars, base, culture, tasting }: Need): string[] {
  const ids = jars.length > 0 ? jars.map(({ id }) => id) : [(base ?? culture ?? tasting)?.id ?? ''];
  return ids.map((id) => `${kind} ${id}`);
}

function isDue(need: Need, now: string): boolean {
  return need.when === 'overdue' || (need.when === 'today' && need.dueAt <= now);
}

/** What a notification says of needs: few are named, the rest counted. */
export function dueWords(needs: readonly Need[]): DueWords {
  const named = needs.slice(0, mostNamed).map(lineOf);
  const more = needs.length - named.length;
  return {
    title: needs.length === 1 ? phrase`Something is due` : phrase`${needs.length} things are due`,
    body: [...named, ...(more > 0 ? [phrase`and ${more} more`] : [])].join('\n'),
  };
}

export interface DueTellerOptions {
  readonly line: Pick<DeskLine, 'ask'>;
  /** Milliseconds, of this machine's clock. */
  readonly clock: () => number;
  readonly show: (words: DueWords) => void;
}

/**
 * Tells what has newly fallen due in one kitchen.
 *
 * Method: what is due when the window opens stands on Today and is not told; after that each thing is told once, until it was seen to
 * and falls due again; what falls due within a quarter of an hour of the last notification waits for the next.
 *
 * @returns asks once; called on a timer
 */
export function dueTeller({ line, clock, show }: DueTellerOptions): () => Promise<void> {
  let told: ReadonlySet<string> | null = null;
  let lastTold_ms = Number.NEGATIVE_INFINITY;
  let asked = 0;
  return async () => {
    asked += 1;
    const envelope = await line.ask({ ask: `due-${asked}`, name: 'today:read', input: {} });
    // A kitchen that cannot be read says so in its window; here there is nothing to tell.
    if (!envelope.ok) return;
    const { needs, now } = envelope.value as Today;
    const due = needs.filter((need) => isDue(need, now));
    const marks = new Set(due.flatMap(marksOf));
    if (told === null) {
      told = marks;
      return;
    }
    const before = told;
    const fresh = due.filter((need) => marksOf(need).some((mark) => !before.has(mark)));
    const isEarly = clock() - lastTold_ms < tellsEvery_ms;
    if (fresh.length === 0 || isEarly) {
      told = new Set([...before].filter((mark) => marks.has(mark)));
      return;
    }
    told = marks;
    lastTold_ms = clock();
    show(dueWords(fresh));
  };
}

/** Asks on a timer until it is stopped. */
export function tellWhatIsDue(options: DueTellerOptions): () => void {
  const tell = dueTeller(options);
  void tell();
  const timer = setInterval(() => void tell(), asksEvery_ms);
  // The timer alone keeps nothing open.
  timer.unref();
  return () => clearInterval(timer);
}
