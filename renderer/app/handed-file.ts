/** A file that was dropped on the window, on its way to the page that takes it. */
let handed: File | null = null;
const listeners = new Set<() => void>();

export function handFile(file: File): void {
  handed = file;
  for (const listener of listeners) listener();
}

/** The file, once: whoever asks first has it. */
export function takeHandedFile(): File | null {
  const file = handed;
  handed = null;
  return file;
}

export function onHandedFile(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
