import { isSameDay } from '#renderer/format/moments.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Trial = ValueOf<'trials:open'>;
type Jar = Trial['jarsWhole'][number];

/** Jars of one trial that want the same thing on the same day. */
export interface DueJars {
  readonly trial: Trial;
  readonly what: 'start' | 'pull';
  readonly when: 'overdue' | 'today' | 'later';
  /** The earliest planned moment among them. */
  readonly at: string;
  readonly jars: readonly Jar[];
}

function wish(jar: Jar): { what: DueJars['what']; at: string } | null {
  if (jar.state === 'planned') return { what: 'start', at: jar.plannedStart };
  if (jar.state === 'fermenting') return { what: 'pull', at: jar.plannedPull };
  return null;
}

/**
 * What the jars want of the maker, the longest overdue first.
 *
 * A jar that is late today counts as overdue from the minute it was planned for.
 *
 * @param now milliseconds, of this machine's clock
 */
export function dueJars(trials: readonly Trial[], now: number): DueJars[] {
  const groups = new Map<string, DueJars>();
  for (const trial of trials) {
    for (const jar of trial.jarsWhole) {
      const wanted = wish(jar);
      if (wanted === null) continue;
      const at = Date.parse(wanted.at);
      const when = at < now ? 'overdue' : isSameDay(at, now) ? 'today' : 'later';
      const key = `${trial.id} ${wanted.what} ${when} ${new Date(at).toDateString()}`;
      const group = groups.get(key);
      const earliest = group !== undefined && Date.parse(group.at) < at ? group.at : wanted.at;
      groups.set(key, { trial, what: wanted.what, when, at: earliest, jars: [...(group?.jars ?? []), jar] });
    }
  }
  return [...groups.values()].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
}
