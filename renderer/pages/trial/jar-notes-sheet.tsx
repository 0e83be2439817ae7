import type { Jar } from '#renderer/parts/jar-work/next-act.ts';
import { QuickReading } from '#renderer/parts/jar-work/quick-reading.tsx';
import { SightingsToTap } from '#renderer/parts/jar-work/sightings-to-tap.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { words } from './words.ts';

/** What was measured and seen in one jar, written down without leaving the shelf. */
export function JarNotesSheet({ jar, onClose }: { readonly jar: Jar; readonly onClose: () => void }) {
  return (
    <Sheet title={words.notesOf(jar.label, jar.levelName)} onClose={onClose}>
      <div className="form">
        <QuickReading jar={jar} />
        {jar.state === 'discarded' ? null : <SightingsToTap jar={jar} />}
      </div>
    </Sheet>
  );
}
