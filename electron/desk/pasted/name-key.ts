/** Names that people read as one are one: case and the way accents are stored do not tell them apart. */
export function nameKey(written: string): string {
  return written.normalize('NFC').trim().toLowerCase();
}
