import { useExplainedLabel } from '#renderer/parts/term/explained-label.tsx';
import { type Way, ways } from './tasting-draft.ts';
import { wayWords, words } from './words.ts';

function WayLabel({
  way,
  isChosen,
  onChoose,
}: {
  readonly way: Way;
  readonly isChosen: boolean;
  readonly onChoose: () => void;
}) {
  const {
    mark,
    words: title,
    line,
    describedBy,
  } = useExplainedLabel<HTMLLabelElement>(wayWords[way].title, wayWords[way].when);
  return (
    <label {...mark} className="way">
      <input
        type="radio"
        name="way"
        value={way}
        checked={isChosen}
        aria-describedby={describedBy}
        onChange={onChoose}
      />
      <span>
        <strong>{title}</strong>
        <span className="small soft">{line}</span>
      </span>
    </label>
  );
}

/** Whether tasters score each sample or put the samples in order. */
export function WayChoice({ way, onChange }: { readonly way: Way; readonly onChange: (way: Way) => void }) {
  return (
    <fieldset className="ways">
      <legend className="unseen">{words.way}</legend>
      {ways.map((each) => (
        <WayLabel key={each} way={each} isChosen={way === each} onChoose={() => onChange(each)} />
      ))}
    </fieldset>
  );
}
