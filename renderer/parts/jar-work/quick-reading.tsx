import type { Jar } from './next-act.ts';
import { ReadingEntry } from './reading-entry.tsx';
import { watchedJar } from './watched.ts';

/** A jar's readings as they are taken. */
export function QuickReading({ jar }: { readonly jar: Jar }) {
  return <ReadingEntry watched={watchedJar(jar)} />;
}
