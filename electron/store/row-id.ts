import { randomBytes } from 'node:crypto';

let lastTime = 0;
let sequence = 0;

/**
 * A new id: UUID version 7, in order of making, so that rows of two kitchens can be merged and sort by age.
 *
 * Method: 48 bits of Unix milliseconds, 12 bits that count on within one millisecond, 62 random bits.
 * Source: RFC 9562, section 5.7 (method 1 of section 6.2 for the counter).
 */
export function newRowId(now: number): string {
  if (now > lastTime) {
    lastTime = now;
    sequence = randomBytes(2).readUInt16BE() & 0x3ff;
  } else {
    sequence += 1;
    if (sequence > 0xfff) {
      lastTime += 1;
      sequence = 0;
    }
  }
  const bytes = randomBytes(16);
  bytes.writeUIntBE(lastTime, 0, 6);
  bytes.writeUInt16BE(0x7000 | sequence, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString('hex');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}
