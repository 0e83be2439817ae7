/** One line of the table that `npm run faults` prints. */
export interface FaultRow {
  readonly fault: string;
  readonly tries: number;
  readonly survived: number;
  readonly lost: number;
  /** What a try was, and how it went. */
  readonly note: string;
  readonly problems: readonly string[];
}

/** A fault that cannot be tried on this machine, and why. */
export interface NotTried {
  readonly fault: string;
  readonly because: string;
}

/** Counts tries: each gives back what went wrong in it. */
export async function tally(
  fault: string,
  tries: number,
  one: (number: number) => Promise<readonly string[]>,
  note: string | (() => string),
): Promise<FaultRow> {
  const problems: string[] = [];
  let survived = 0;
  for (let number = 0; number < tries; number += 1) {
    const found = await one(number);
    if (found.length === 0) survived += 1;
    else problems.push(`${fault}, try ${number}: ${found.join('; ')}`);
  }
  return { fault, tries, survived, lost: tries - survived, note: typeof note === 'string' ? note : note(), problems };
}
