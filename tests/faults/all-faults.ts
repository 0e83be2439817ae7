import { type BaseKitchen, oldKitchen } from './base-kitchens.ts';
import { cutLog } from './cut-log.ts';
import type { FaultRow, NotTried } from './fault-row.ts';
import { flippedBits } from './flipped-bits.ts';
import { fullByPages, fullDisk } from './full-disk.ts';
import { killRuns } from './kill-runs.ts';
import { lockedFile, readOnlyFolder, takenFile } from './taken-files.ts';

export type Fault = () => Promise<FaultRow | NotTried>;

/** The program killed while it works. */
export async function killed(base: BaseKitchen, child: string, tries: number): Promise<FaultRow> {
  const report = await killRuns({
    tries,
    seed: 4,
    child,
    bases: { 'a kitchen of today': base.file, 'an older kitchen': oldKitchen },
  });
  const kinds = Object.keys(report.during).length;
  return {
    ...report,
    fault: 'program killed (SIGKILL) at a random moment',
    note: `a process a try; met in ${kinds} kinds of work; ${report.unsaid} times the act under way had just been kept`,
  };
}

/** Every fault but the killing, with so many tries of each. */
export function diskFaults(base: BaseKitchen, few: number, flips: number, everyFrame: number): readonly Fault[] {
  return [
    () => cutLog(base, 3, everyFrame),
    () => fullDisk(base, few, 5),
    () => fullByPages(base, few, 6),
    () => readOnlyFolder(base, few),
    () => lockedFile(base, few, 7),
    () => takenFile(base, few * 2, 8),
    () => flippedBits(base, flips, 2),
  ];
}
