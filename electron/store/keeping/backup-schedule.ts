const day_ms = 86_400_000;

function dayOf(at: Date): string {
  return at.toISOString().slice(0, 10);
}

/** The Monday of a moment's week, in UTC. */
function weekOf(at: Date): string {
  const sinceMonday = (at.getUTCDay() + 6) % 7;
  return dayOf(new Date(at.getTime() - sinceMonday * day_ms));
}

function monthOf(at: Date): string {
  return at.toISOString().slice(0, 7);
}

const spans = [
  { of: dayOf, keeps: 7 },
  { of: weekOf, keeps: 4 },
  { of: monthOf, keeps: 12 },
] as const;

/**
 * Which backups to keep: the newest of each of the last 7 days, 4 weeks and 12 months that have one.
 *
 * Counts days, weeks and months that have a backup, not those that passed: after a long rest nothing is thrown away by age alone.
 * The newest of all is always among them.
 */
export function backupsToKeep(moments: readonly Date[]): ReadonlySet<Date> {
  const newestFirst = [...moments].sort((a, b) => b.getTime() - a.getTime());
  const kept = new Set<Date>();
  for (const { of, keeps } of spans) {
    const seen = new Set<string>();
    for (const at of newestFirst) {
      if (seen.size === keeps) break;
      if (seen.has(of(at))) continue;
      seen.add(of(at));
      kept.add(at);
    }
  }
  return kept;
}
