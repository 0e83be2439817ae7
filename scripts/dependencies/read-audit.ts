import { z } from 'zod';

const report = z.object({
  metadata: z.object({
    vulnerabilities: z.record(z.string(), z.number()),
    dependencies: z.object({ total: z.number() }),
  }),
  vulnerabilities: z.record(z.string(), z.object({ severity: z.string(), range: z.string() })),
});

export interface AuditWords {
  readonly lines: readonly string[];
  /** 0 nothing known, 1 something is, 2 nobody could be asked. */
  readonly code: 0 | 1 | 2;
}

/** Puts npm's audit report into sentences; anything but a report means that no registry answered, and is never taken for good news. */
export function readAudit(text: string): AuditWords {
  let whole: unknown = null;
  try {
    whole = JSON.parse(text);
  } catch {
    // Said below: no report.
  }
  const read = report.safeParse(whole);
  if (!read.success) {
    return { lines: ['No registry answered: nothing was checked. Try again with a network.'], code: 2 };
  }
  const { metadata, vulnerabilities } = read.data;
  const found = Object.entries(vulnerabilities);
  return {
    lines: [
      ...found.map(([name, { severity, range }]) => `${name} ${range}: ${severity}`),
      `${metadata.dependencies.total} packages asked about, ${found.length} with a known weakness`,
    ],
    code: found.length === 0 ? 0 : 1,
  };
}
