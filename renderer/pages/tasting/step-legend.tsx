import { scaleWord } from '#renderer/format/scale-words.ts';
import { justAboutRightWords } from '#shared/just-about-right-words.ts';
import { words } from './words.ts';
import './hedonic-legend.css';

/** Which key stands for which of the five steps, for whoever answers "just about right". */
export function StepLegend({ names }: { readonly names: readonly string[] }) {
  return (
    <section className="hedonic" aria-label={words.steps(names)}>
      <h2 className="hedonic-title">{words.steps(names)}</h2>
      <ol className="hedonic-words">
        {justAboutRightWords.map((word, position) => (
          <li key={word}>
            <strong>{position + 1}</strong> {scaleWord(word)}
          </li>
        ))}
      </ol>
    </section>
  );
}
