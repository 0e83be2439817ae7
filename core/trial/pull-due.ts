/** When a jar was planned to be started and pulled, and when it was started. */
export interface JarDays {
  readonly plannedStart: string;
  readonly plannedPull: string;
  readonly startedAt: string | null;
}

/**
 * When a jar is to be pulled: as long after its start as was planned. A jar that was started a day late and pulled on the planned day would
 * have stood a day less than its level says.
 *
 * @param jar moments in ISO 8601 with offset; `startedAt` null before the start
 * @returns ISO 8601 in UTC once it is started, the plan's own moment before
 * @example pullDue({ plannedStart: '2026-05-01T08:00:00Z', plannedPull: '2026-05-02T08:00:00Z', startedAt: '2026-05-01T20:00:00Z' }) // '2026-05-02T20:00:00.000Z'
 */
export function pullDue({ plannedStart, plannedPull, startedAt }: JarDays): string {
  if (startedAt === null) return plannedPull;
  return new Date(Date.parse(startedAt) + Date.parse(plannedPull) - Date.parse(plannedStart)).toISOString();
}
