import type { RefObject } from 'react';
import { Button } from '#renderer/parts/button/button.tsx';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import { chartPicture } from './chart-picture.ts';

const words = {
  picture: 'Copy picture',
  figures: 'Copy figures',
  pictureDone: (title: string) => `${title}: the picture is on the clipboard.`,
  figuresDone: (title: string) => `${title}: the figures are on the clipboard.`,
  refused: 'The clipboard could not be written. The table below the chart can be selected and copied by hand.',
} as const;

interface CopyChartProps {
  readonly title: string;
  /** The figures as tab-separated text. */
  readonly figures: string;
  /** What the drawing stands in. */
  readonly drawing: RefObject<HTMLElement | null>;
}

/** Puts a chart on the clipboard, as a picture or as figures; says so only once it is there. */
export function CopyChart({ title, figures, drawing }: CopyChartProps) {
  const { say } = useToasts();

  async function copy(item: () => ClipboardItem | null, done: string): Promise<void> {
    try {
      const ready = item();
      if (ready === null) return;
      await navigator.clipboard.write([ready]);
      say({ kind: 'done', words: done });
    } catch {
      say({ kind: 'fault', words: words.refused });
    }
  }

  const picture = () => {
    const svg = drawing.current?.querySelector('svg') ?? null;
    return svg === null ? null : new ClipboardItem({ 'image/png': chartPicture(svg, title) });
  };
  const text = () => new ClipboardItem({ 'text/plain': new Blob([figures], { type: 'text/plain' }) });
  return (
    <div className="button-row no-print">
      <Button
        weight="quiet"
        aria-label={`${words.picture}: ${title}`}
        onClick={() => void copy(picture, words.pictureDone(title))}
      >
        {words.picture}
      </Button>
      <Button
        weight="quiet"
        aria-label={`${words.figures}: ${title}`}
        onClick={() => void copy(text, words.figuresDone(title))}
      >
        {words.figures}
      </Button>
    </div>
  );
}
