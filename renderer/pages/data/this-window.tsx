import { useSyncExternalStore } from 'react';
import {
  changeWindowWays,
  decimalWays,
  firstDays,
  hourWays,
  onWindowWays,
  themes,
  windowWays,
} from '#renderer/format/window-ways.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { LanguageChoice } from './language-choice.tsx';
import { windowWords } from './window-words.ts';

interface WayProps<Way extends string> {
  readonly label: string;
  readonly ways: readonly Way[];
  readonly words: Readonly<Record<Way, string>>;
  readonly chosen: Way;
  readonly onChoose: (way: Way) => void;
}

function WayChoice<Way extends string>({ label, ways, words, chosen, onChoose }: WayProps<Way>) {
  return (
    <Field label={label}>
      {(wiring) => (
        <select
          {...wiring}
          value={chosen}
          onChange={({ target }) => onChoose(ways.find((way) => way === target.value) ?? chosen)}
        >
          {ways.map((way) => (
            <option key={way} value={way}>
              {words[way]}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

/** How this window shows things; other windows of the kitchen keep their own ways. */
export function ThisWindow() {
  const { theme, hours, decimal, firstDay } = useSyncExternalStore(onWindowWays, windowWays);
  return (
    <section className="section">
      <h2>
        <Explained words={windowWords.title} />
      </h2>
      <div className="data-window">
        <LanguageChoice />
        <WayChoice
          label={windowWords.theme}
          ways={themes}
          words={windowWords.themes}
          chosen={theme}
          onChoose={(way) => changeWindowWays({ theme: way })}
        />
        <WayChoice
          label={windowWords.hours}
          ways={hourWays}
          words={windowWords.hourWays}
          chosen={hours}
          onChoose={(way) => changeWindowWays({ hours: way })}
        />
        <WayChoice
          label={windowWords.decimal}
          ways={decimalWays}
          words={windowWords.decimalWays}
          chosen={decimal}
          onChoose={(way) => {
            changeWindowWays({ decimal: way });
            // Hints were said when their file was read.
            location.reload();
          }}
        />
        <WayChoice
          label={windowWords.firstDay}
          ways={firstDays}
          words={windowWords.firstDays}
          chosen={firstDay}
          onChoose={(way) => changeWindowWays({ firstDay: way })}
        />
      </div>
    </section>
  );
}
