import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type Jar, jarsOfTrial } from '#store/rows/jars.ts';
import { entriesOfTrial, tastingsOfTrial } from '#store/rows/timeline.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';

type Lane = ValueOf<'trials:timeline'>['jars'][number];

/** The first of the ways in which a jar left the shelf. */
function endOf(jar: Jar): Pick<Lane, 'endedAt' | 'endedBy'> {
  const ends = (
    [
      ['pulled', jar.pulledAt],
      ['strained', jar.strainedAt],
      ['discarded', jar.discardedAt],
    ] as const
  ).flatMap(([endedBy, endedAt]) => (endedAt === null ? [] : [{ endedBy, endedAt }]));
  const [first] = ends.toSorted((one, other) => one.endedAt.localeCompare(other.endedAt));
  return first ?? { endedAt: null, endedBy: null };
}

export const timelineHandlers: Handlers<'trials:timeline'> = {
  'trials:timeline'(kitchen, { trial }) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const entries = entriesOfTrial(kitchen.read, trial);
    return {
      jars: jarsOfTrial(kitchen.read, trial).map((jar) => ({
        jar: jar.id,
        label: jar.label,
        level: jar.levelName,
        plannedStart: jar.plannedStart,
        plannedPull: jar.plannedPull,
        startedAt: jar.startedAt,
        ...endOf(jar),
        entries: entries.get(jar.id) ?? [],
      })),
      tastings: tastingsOfTrial(kitchen.read, trial),
    };
  },
};
