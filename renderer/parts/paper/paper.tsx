import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { PaperSize } from './paper-size.ts';
import './paper.css';

const pixelsPerMillimetre = 96 / 25.4;

interface PaperProps {
  readonly size: PaperSize;
  readonly label: string;
  /** Sheets, each a `PaperSheet`. */
  readonly children: ReactNode;
}

/** Sheets as they will be printed: scaled to the window on screen, in true size and alone on paper. */
export function Paper({ size, label, children }: PaperProps) {
  const place = useRef<HTMLElement>(null);
  const [scale, setScale] = useState(1);
  useEffect(() => {
    const element = place.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(([entry]) => {
      const room = entry?.contentRect.width ?? 0;
      // On paper everything is one to one, and the window comes back afterwards.
      if (room > 0 && !window.matchMedia('print').matches) {
        setScale(Math.min(1, room / (size.width_mm * pixelsPerMillimetre)));
      }
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [size.width_mm]);
  return (
    <section
      ref={place}
      className="paper"
      aria-label={label}
      style={{
        '--paper-width': `${size.width_mm}mm`,
        '--paper-height': `${size.height_mm}mm`,
        '--paper-scale': scale,
      }}
    >
      <style>{`@page { size: ${size.width_mm}mm ${size.height_mm}mm; margin: 0; }`}</style>
      {children}
    </section>
  );
}

interface PaperSheetProps {
  readonly label: string;
  /** How far the words stay from the edge. */
  readonly margin?: string;
  /** True where more than a page may be needed: it then goes on to a second one. */
  readonly canGrow?: boolean;
  readonly children: ReactNode;
}

/** One sheet of paper. */
export function PaperSheet({ label, margin = '0', canGrow = false, children }: PaperSheetProps) {
  return (
    <article
      className={canGrow ? 'paper-sheet can-grow' : 'paper-sheet'}
      aria-label={label}
      style={{ '--paper-margin': margin }}
    >
      {children}
    </article>
  );
}
