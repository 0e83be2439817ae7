import { scaleWord } from '#renderer/format/scale-words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { hedonicWords } from '#shared/hedonic-words.ts';
import { words } from './words.ts';
import './hedonic-legend.css';

/** The nine words of the liking scale, for whoever scores it. */
export function HedonicLegend() {
  return (
    <section className="hedonic" aria-label={words.hedonic}>
      <h2 className="hedonic-title">
        <Explained words={words.hedonic} />
      </h2>
      <ol className="hedonic-words">
        {hedonicWords.map((word, position) => (
          <li key={word}>
            <strong>{position + 1}</strong> {scaleWord(word)}
          </li>
        ))}
      </ol>
    </section>
  );
}
