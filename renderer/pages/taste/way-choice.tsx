import { type Way, ways } from './tasting-draft.ts';
import { wayWords, words } from './words.ts';

/** Whether tasters score each sample or put the samples in order. */
export function WayChoice({ way, onChange }: { readonly way: Way; readonly onChange: (way: Way) => void }) {
  return (
    <fieldset className="ways">
      <legend className="unseen">{words.way}</legend>
      {ways.map((each) => (
        <label key={each} className="way">
          <input type="radio" name="way" value={each} checked={way === each} onChange={() => onChange(each)} />
          <span>
            <strong>{wayWords[each].title}</strong>
            <span className="small soft">{wayWords[each].when}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
