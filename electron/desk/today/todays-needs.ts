import { localTime } from '#core/trial/local-day.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '#store/reader.ts';
import {
  fedCultures,
  needingJars,
  openTastings,
  type PutOff,
  putOffsAfter,
  unstrainedBases,
} from '#store/rows/needing.ts';
import {
  type Clock,
  needOfBase,
  needOfCulture,
  needOfTasting,
  needsOfJar,
  type SingleNeed,
  tasteWithin_days,
} from './single-needs.ts';

export type Need = ValueOf<'today:read'>['needs'][number];

const ranks: readonly Need['when'][] = ['overdue', 'today', 'later', 'put-off'];

type Subject = Pick<Need, 'trial' | 'jars' | 'base' | 'culture' | 'tasting' | 'isSample'>;
const nobody = { trial: null, jars: [], base: null, culture: null, tasting: null };

function named(row: { id: string; name: string; is_sample: 0 | 1 }) {
  return { id: row.id, name: row.name, isSample: row.is_sample === 1 };
}

function putOffKey(subject: string, need: string): string {
  return `${need} ${subject}`;
}

/** The latest of each thing that is put off. */
function allPutOff(read: Reader, now: string): ReadonlyMap<string, PutOff> {
  const found = new Map<string, PutOff>();
  for (const putOff of putOffsAfter(read, now)) {
    const key = putOffKey(putOff.subject, putOff.need);
    const before = found.get(key);
    if (before === undefined || before.until_at < putOff.until_at) found.set(key, putOff);
  }
  return found;
}

function whole(single: SingleNeed, subject: Subject, id: string, clock: Clock, putOff: PutOff | undefined): Need {
  const when = putOff === undefined ? single.when : 'put-off';
  const place = subject.trial !== null && subject.tasting === null ? subject.trial.id : id;
  const day = localTime(single.dueAt, clock.zone).day;
  return {
    key: [single.kind, when, place, day, ...(putOff === undefined ? [] : [putOff.until_at, putOff.reason ?? ''])].join(
      ' ',
    ),
    kind: single.kind,
    when,
    dueAt: single.dueAt,
    ...subject,
    basis: single.basis,
    putOff: putOff === undefined ? null : { ids: [putOff.id], until: putOff.until_at, reason: putOff.reason },
  };
}

/** Jars of one trial that want the same on the same day stand together. */
function grouped(needs: readonly Need[]): Need[] {
  const groups = new Map<string, Need>();
  for (const need of needs) {
    const before = groups.get(need.key);
    if (before === undefined) {
      groups.set(need.key, need);
      continue;
    }
    const earlier = need.dueAt.localeCompare(before.dueAt) < 0 ? need : before;
    groups.set(need.key, {
      ...before,
      dueAt: earlier.dueAt,
      jars: [...before.jars, ...need.jars],
      putOff:
        before.putOff === null || need.putOff === null
          ? before.putOff
          : { ...before.putOff, ids: [...before.putOff.ids, ...need.putOff.ids] },
    });
  }
  return [...groups.values()];
}

/** Everything that wants something: what is overdue first, then today's by the hour, then what comes, then what is put off. */
export function todaysNeeds(read: Reader, clock: Clock): Need[] {
  const off = allPutOff(read, clock.now);
  const make = (single: SingleNeed, subject: Subject, id: string) =>
    whole(single, subject, id, clock, off.get(putOffKey(id, single.kind)));
  // A day more than is waited for: the days themselves are judged jar by jar.
  const outSince = new Date(Date.parse(clock.now) - (tasteWithin_days + 2) * 86_400_000).toISOString();
  const ofJars = needingJars(read, outSince).flatMap((jar) => {
    const trial = { id: jar.trial_id, question: jar.question };
    const isSample = jar.is_sample === 1;
    const subject = { ...nobody, trial, jars: [{ id: jar.id, name: jar.label, isSample }], isSample };
    return needsOfJar(jar, clock, off.has(putOffKey(jar.id, 'pull'))).map((single) => make(single, subject, jar.id));
  });
  const ofBases = unstrainedBases(read).map((base) =>
    make(needOfBase(base, clock), { ...nobody, base: named(base), isSample: base.is_sample === 1 }, base.id),
  );
  const ofCultures = fedCultures(read).flatMap((culture) => {
    const single = needOfCulture(culture, clock);
    const subject = { ...nobody, culture: named(culture), isSample: culture.is_sample === 1 };
    return single === null ? [] : [make(single, subject, culture.id)];
  });
  const ofTastings = openTastings(read).map((tasting) => {
    const trial =
      tasting.trial_id === null ? null : { id: tasting.trial_id, question: tasting.question ?? tasting.name };
    const subject = { ...nobody, trial, tasting: named(tasting), isSample: tasting.is_sample === 1 };
    return make(needOfTasting(tasting, clock), subject, tasting.id);
  });
  return grouped([...ofJars, ...ofBases, ...ofCultures, ...ofTastings]).sort(
    (a, b) => ranks.indexOf(a.when) - ranks.indexOf(b.when) || a.dueAt.localeCompare(b.dueAt),
  );
}
