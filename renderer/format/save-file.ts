/** A file's name from a title: plain letters, so that every machine takes it. @example fileName('Tang: how long?', 'svg') // 'tang-how-long.svg' */
export function fileName(title: string, ending: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  return `${plain === '' ? 'chart' : plain}.${ending}`;
}

/** Hands a file to the browser to be kept. */
export function saveFile(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Not at once: the browser reads it after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
