/** A leaf of the core was called outside its domain. Only our own code can cause it: people's data is checked before. */
export class OutOfDomain extends Error {
  constructor(argument: string, value: unknown, permitted: string) {
    super(`${argument} is ${String(value)}; permitted: ${permitted}`);
    this.name = 'OutOfDomain';
  }
}

/** Passes a finite number within [low, high]; throws OutOfDomain otherwise. */
export function within(argument: string, value: number, low: number, high: number): number {
  if (!(value >= low && value <= high)) throw new OutOfDomain(argument, value, `${low} to ${high}`);
  return value;
}
