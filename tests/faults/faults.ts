// npm run faults: breaks a kitchen in every way this machine permits, and prints what became of it.

import { diskFaults, killed } from './all-faults.ts';
import { sampleKitchen } from './base-kitchens.ts';
import { buildChild } from './build-child.ts';
import type { FaultRow } from './fault-row.ts';
import { fuzzRow } from './requests/fuzz-row.ts';

const kills = Number(process.argv[2] ?? 2000);
const flips = Number(process.argv[3] ?? 1000);
const requests = Number(process.argv[4] ?? 1_000_000);

/** What a plain machine cannot try. */
const never = [
  { fault: 'power cut', because: 'it needs a machine to cut; the log cut at each frame stands for it' },
  { fault: 'a disk that says it has written and has not', because: 'it needs such a disk or a kernel module' },
  { fault: 'network folders (SMB, NFS)', because: 'they need a server' },
  { fault: 'Windows and macOS', because: 'this run is of one machine' },
];

const columns = [60, 7, 9, 5] as const;

function line(...[fault, ...counts]: [string, ...(string | number)[]]): string {
  return [fault.padEnd(columns[0]), ...counts.map((count, at) => String(count).padStart(columns[at + 1] ?? 0))].join(
    '',
  );
}

const base = await sampleKitchen();
const child = await buildChild();
console.log(line('fault', 'tries', 'survived', 'lost'));
const rows: FaultRow[] = [];
const notTried = [...never];
for (const fault of [
  () => killed(base, child.file, kills),
  ...diskFaults(base, 20, flips, 1),
  () => fuzzRow(requests, 1),
]) {
  const row = await fault();
  if ('because' in row) {
    notTried.push(row);
    continue;
  }
  rows.push(row);
  console.log(line(row.fault, row.tries, row.survived, row.lost));
  console.log(`    ${row.note}`);
  for (const problem of row.problems) console.log(`    ! ${problem}`);
}
child.remove();
base.remove();
for (const { fault, because } of notTried) console.log(`not tried: ${fault} (${because})`);
const lost = rows.reduce((sum, row) => sum + row.lost, 0);
console.log(`${rows.reduce((sum, row) => sum + row.tries, 0)} tries, ${lost} lost`);
process.exitCode = lost === 0 ? 0 : 1;
