import { pullDue } from '#core/trial/pull-due.ts';
import { phrase } from '#core/words/phrase.ts';
import { dayOfJar, dayWords } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { additionWords, coverWords, daysWords, jarStateWords, joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { JarDay } from './day-ring.tsx';
import { type CompositionOf, jarContents } from './jar-contents.ts';
import type { ShelfJar } from './shelf.tsx';
import { words } from './words.ts';

type Trial = ValueOf<'trials:open'>;
type Jar = Trial['jarsWhole'][number];

/** How a jar is doing, in a few words for the shelf's edge. */
export function jarDayWords(jar: Jar, days: number, now: number): string {
  if (jar.state === 'planned') return phrase`starts ${dayWords(jar.plannedStart)}`;
  if (jar.state !== 'fermenting' || jar.startedAt === null) return jarStateWords[jar.state];
  const due = pullDue(jar);
  return Date.parse(due) < now
    ? phrase`due ${dayWords(due)}`
    : phrase`day ${dayOfJar(jar.startedAt, now)} of ${daysWords(days)}`;
}

/** Share of its days that a jar has stood, 0–1. */
export function jarProgress(jar: Jar, days: number, now: number): number {
  if (jar.startedAt === null) return 0;
  const until = jar.pulledAt ?? jar.strainedAt ?? jar.discardedAt;
  const stood = (until === null ? now : Date.parse(until)) - Date.parse(jar.startedAt);
  return days > 0 ? Math.min(1, Math.max(0, stood / (days * 86_400_000))) : 1;
}

/** The jar's day as a ring shows it; undefined where it doesn't stand, or is thrown away. */
export function jarDay(jar: Jar, days: number, now: number): JarDay | undefined {
  if (jar.startedAt === null || jar.state === 'discarded') return undefined;
  const end = jar.pulledAt ?? jar.strainedAt;
  return {
    day: dayOfJar(jar.startedAt, end === null ? now : Date.parse(end)),
    share: jarProgress(jar, days, now),
    isLate: jar.state === 'fermenting' && Date.parse(pullDue(jar)) < now,
  };
}

export interface ShelfSurroundings {
  readonly compositionOf: CompositionOf;
  readonly measures: Measures;
  readonly now: number;
}

/** A trial's jars, ready to stand on a shelf. */
export function trialShelfJars(
  trial: Trial,
  jars: readonly Jar[],
  { compositionOf, measures, now }: ShelfSurroundings,
): ShelfJar[] {
  return jars.flatMap((jar): ShelfJar[] => {
    const level = trial.levelsWhole.find(({ id }) => id === jar.level);
    if (level === undefined) return [];
    const { formula } = level;
    const inside = jar.state === 'strained' ? formula.additions.filter(({ leftIn }) => leftIn) : formula.additions;
    const contents = jarContents(jar.base_mL, inside, compositionOf);
    const doing = jarDayWords(jar, formula.days, now);
    const held = formula.additions.map((addition) => additionWords(addition, measures));
    return [
      {
        key: jar.id,
        to: { href: `/jars/${jar.id}`, words: phrase`Open jar ${jar.label}` },
        vessel: trial.vessel,
        contents,
        additions: inside,
        cover: formula.cover,
        label: jar.label,
        progress: jarProgress(jar, formula.days, now),
        isBubbling: jar.state === 'fermenting',
        isFrothy: jar.isFrothy,
        day: jarDay(jar, formula.days, now),
        isGhost: jar.state === 'planned' || jar.state === 'discarded',
        words: [
          jar.isControl
            ? phrase`Jar ${jar.label}, ${jar.levelName}, the control: ${doing}`
            : phrase`Jar ${jar.label}, ${jar.levelName}: ${doing}`,
          phrase`${measures.volume(contents.volume_mL)} in ${measures.volume(trial.vessel.capacity_mL)}`,
          held.length === 0 ? phrase`nothing added` : joined(held),
          ...(jar.isFrothy ? [words.froth] : []),
          ...(formula.cover === null ? [] : [coverWords[formula.cover]]),
        ].join('; '),
        under: (
          <>
            <span>
              <strong>{jar.levelName}</strong>
              {jar.isControl ? <span className="soft"> {phrase`control`}</span> : null}
            </span>
            <span className="soft">{doing}</span>
          </>
        ),
      },
    ];
  });
}
