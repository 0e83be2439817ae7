import { createInterface } from 'node:readline';

interface Addresses {
  /** A fresh address with a ticket that opens the page once. */
  address(): string;
}

/** Writes an address, and a fresh one at each Enter: the one before, if nobody used it, then opens nothing any more. */
export function tellAddresses(loopback: Addresses, input: NodeJS.ReadableStream, output: NodeJS.WritableStream): void {
  const tell = (): void => void output.write(`${loopback.address()}\n`);
  tell();
  createInterface({ input }).on('line', tell);
}
