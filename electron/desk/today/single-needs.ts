import { dailyNeed } from '#core/trial/daily-need.ts';
import { dayAfter, localTime, momentOf } from '#core/trial/local-day.ts';
import { laterBy } from '#core/trial/moment.ts';
import {
  type NeedKind,
  needBasis,
  restsCold,
  revivalFeed_days,
  usualFirstFerment_hours,
  usualRefresh_days,
} from '#core/trial/need.ts';
import { pullDue } from '#core/trial/pull-due.ts';
import type { NeedingBase, NeedingCulture, NeedingJar, NeedingTasting } from '#store/rows/needing.ts';

/** What one jar, base, culture or tasting wants, and when. */
export interface SingleNeed {
  readonly kind: NeedKind;
  readonly when: 'overdue' | 'today' | 'later';
  readonly dueAt: string;
  readonly basis: string | null;
}

export interface Clock {
  readonly now: string;
  readonly zone: string;
}

/** A pulled jar that nobody tasted within a month is not waited for any more. Common practice, no source. */
export const tasteWithin_days = 30;
/** What lies further ahead than a week is not shown for cultures. */
const ahead_days = 7;

/** Planned to the minute: late from that minute on. */
function toTheMinute(dueAt: string, { now, zone }: Clock): SingleNeed['when'] {
  if (dueAt < now) return 'overdue';
  return localTime(dueAt, zone).day === localTime(now, zone).day ? 'today' : 'later';
}

/** A matter of the day: late from the next day on. */
function toTheDay(dueAt: string, { now, zone }: Clock): SingleNeed['when'] {
  const [due, today] = [localTime(dueAt, zone).day, localTime(now, zone).day];
  if (due === today) return 'today';
  return due < today ? 'overdue' : 'later';
}

interface Held {
  readonly cover?: string | null;
  readonly also?: Readonly<Record<string, unknown>>;
}

/** An open jar, or one under cloth, whose plan holds a daily stir. */
export function isStirredDaily({ held, vessel_kind }: Pick<NeedingJar, 'held' | 'vessel_kind'>): boolean {
  const { cover, also = {} } = JSON.parse(held) as Held;
  if (vessel_kind !== 'open-jar' && cover !== 'cloth') return false;
  return Object.entries(also).some(
    ([name, value]) => /stir/i.test(name) && (value === true || /dai|every day|once a day/i.test(String(value))),
  );
}

function daily(jar: NeedingJar, startedAt: string, clock: Clock): SingleNeed | null {
  const kind = isStirredDaily(jar) ? 'stir' : 'look';
  const done = kind === 'stir' ? jar.stirred_at : jar.looked_at;
  const { dueAt, isMissed } = dailyNeed(startedAt, done, clock.now, clock.zone);
  const when = isMissed ? 'overdue' : toTheDay(dueAt, clock);
  return when === 'later' ? null : { kind, when, dueAt, basis: needBasis[kind] };
}

/** What one jar wants: to be started, looked at or stirred, pulled, tasted. One whose pulling is put off is looked at meanwhile. */
export function needsOfJar(jar: NeedingJar, clock: Clock, isPullPutOff = false): SingleNeed[] {
  const { started_at, pulled_at, strained_at } = jar;
  if (started_at === null) {
    const dueAt = jar.planned_start;
    return [{ kind: 'start', when: toTheMinute(dueAt, clock), dueAt, basis: null }];
  }
  const outAt = pulled_at ?? strained_at;
  if (outAt === null) {
    const dueAt = pullDue({ plannedStart: jar.planned_start, plannedPull: jar.planned_pull, startedAt: started_at });
    const pull: SingleNeed = { kind: 'pull', when: toTheMinute(dueAt, clock), dueAt, basis: null };
    // Who pulls a jar looks at it.
    const look = pull.when === 'overdue' && !isPullPutOff ? null : daily(jar, started_at, clock);
    return look === null ? [pull] : [look, pull];
  }
  if (jar.is_tasted === 1) return [];
  const [out, today] = [localTime(outAt, clock.zone).day, localTime(clock.now, clock.zone).day];
  if (dayAfter(out, tasteWithin_days) < today) return [];
  return [{ kind: 'taste', when: dayAfter(out, 1) < today ? 'overdue' : 'today', dueAt: outAt, basis: null }];
}

export function needOfBase({ made_at, planned_hours }: NeedingBase, clock: Clock): SingleNeed {
  const dueAt = new Date(laterBy(made_at, planned_hours ?? usualFirstFerment_hours)).toISOString();
  const basis = planned_hours === null ? needBasis.strain : null;
  return { kind: 'strain', when: toTheMinute(dueAt, clock), dueAt, basis };
}

/** A culture is fed by its own interval, daily while it is woken, and every two weeks where it rests cold; otherwise nobody said. */
export function needOfCulture(culture: NeedingCulture, clock: Clock): SingleNeed | null {
  const isReviving = culture.is_reviving === 1;
  const usual = restsCold(culture.rests) ? usualRefresh_days : null;
  const days = isReviving ? revivalFeed_days : (culture.refresh_days ?? usual);
  if (days === null) return null;
  const { day, hour, minute } = localTime(culture.fed_at, clock.zone);
  const dueAt = Number.isInteger(days)
    ? momentOf(dayAfter(day, days), hour, minute, clock.zone)
    : new Date(laterBy(culture.fed_at, days * 24)).toISOString();
  const horizon = dayAfter(localTime(clock.now, clock.zone).day, ahead_days);
  if (localTime(dueAt, clock.zone).day > horizon) return null;
  const basis = isReviving ? needBasis.revive : culture.refresh_days === null ? needBasis.feed : null;
  return { kind: 'feed', when: toTheDay(dueAt, clock), dueAt, basis };
}

export function needOfTasting({ held_at }: NeedingTasting, clock: Clock): SingleNeed {
  return { kind: 'taste', when: toTheDay(held_at, clock), dueAt: held_at, basis: null };
}
