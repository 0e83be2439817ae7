import type { RefObject } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { fileName, saveFile } from '#renderer/format/save-file.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import { chartPicture } from './chart-picture.ts';
import { type ChartSvg, chartSvg, type PictureWords } from './chart-svg.ts';

const words = {
  take: (title: string) => phrase`Save or copy ${title.charAt(0).toLowerCase()}${title.slice(1)}`,
  copyPicture: phrase`Copy picture`,
  copyFigures: phrase`Copy figures`,
  savePng: phrase`Save PNG`,
  saveSvg: phrase`Save SVG`,
  saveCsv: phrase`Save CSV`,
  pictureDone: (title: string) => phrase`${title}: the picture is on the clipboard.`,
  figuresDone: (title: string) => phrase`${title}: the figures are on the clipboard.`,
  saved: (file: string) => phrase`${file} was handed to your downloads.`,
  refused: phrase`The clipboard could not be written. The table beside the chart can be selected and copied by hand.`,
  notDrawn: phrase`The picture could not be drawn. The table beside the chart holds the same figures.`,
} as const;

const look_ms = 100;
const looks = 100;

interface TakeChartProps {
  readonly picture: PictureWords;
  /** The means as tab-separated text, for the clipboard. */
  readonly figures: string;
  /** Every mark as CSV. */
  readonly csv: () => string;
  /** What the drawing stands in. */
  readonly drawing: RefObject<HTMLElement | null>;
}

/** Takes a chart along: to the clipboard or as a file, as a picture or as figures; says so only once it is there. */
export function TakeChart({ picture, figures, csv, drawing }: TakeChartProps) {
  const { say } = useToasts();
  const { title } = picture;

  /** The drawing; its library may still be on its way. */
  async function drawn(): Promise<ChartSvg> {
    for (let look = 0; look < looks; look += 1) {
      const svg = drawing.current?.querySelector('svg') ?? null;
      if (svg !== null) return chartSvg(svg, picture);
      await new Promise((again) => setTimeout(again, look_ms));
    }
    throw new Error('There is no drawing.');
  }

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

  async function save(ending: string, content: () => Promise<Blob> | Blob): Promise<void> {
    try {
      const name = fileName(title, ending);
      saveFile(await content(), name);
      say({ kind: 'done', words: words.saved(name) });
    } catch {
      say({ kind: 'fault', words: words.notDrawn });
    }
  }

  const svgBlob = async () => new Blob([(await drawn()).text], { type: 'image/svg+xml' });
  const pngBlob = async () => chartPicture(await drawn());
  const acts: readonly (readonly [string, () => Promise<void>])[] = [
    [words.savePng, () => save('png', pngBlob)],
    [words.saveSvg, () => save('svg', svgBlob)],
    // The mark at its head tells spreadsheets that it is UTF-8.
    [words.saveCsv, () => save('csv', () => new Blob(['\uFEFF', csv()], { type: 'text/csv' }))],
    [words.copyPicture, () => copy(() => new ClipboardItem({ 'image/png': pngBlob() }), words.pictureDone(title))],
    [
      words.copyFigures,
      () =>
        copy(
          () => new ClipboardItem({ 'text/plain': new Blob([figures], { type: 'text/plain' }) }),
          words.figuresDone(title),
        ),
    ],
  ];
  return (
    <details className="no-print">
      <summary>{words.take(title)}</summary>
      <div className="button-row chart-acts">
        {acts.map(([name, act]) => (
          <Button key={name} weight="quiet" aria-label={`${name}: ${title}`} onClick={() => void act()}>
            {name}
          </Button>
        ))}
      </div>
    </details>
  );
}
