import { useSyncExternalStore } from 'react';
import { changeWindowWays, hourWays, onWindowWays, themes, windowWays } from '#renderer/format/window-ways.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { windowWords } from './window-words.ts';

/** How this window shows things; other windows of the kitchen keep their own ways. */
export function ThisWindow() {
  const ways = useSyncExternalStore(onWindowWays, windowWays);
  return (
    <section className="section">
      <h2>{windowWords.title}</h2>
      <div className="data-window">
        <Field label={windowWords.theme}>
          {(wiring) => (
            <select
              {...wiring}
              value={ways.theme}
              onChange={({ target }) =>
                changeWindowWays({ theme: themes.find((theme) => theme === target.value) ?? 'system' })
              }
            >
              {themes.map((theme) => (
                <option key={theme} value={theme}>
                  {windowWords.themes[theme]}
                </option>
              ))}
            </select>
          )}
        </Field>
        <Field label={windowWords.hours}>
          {(wiring) => (
            <select
              {...wiring}
              value={ways.hours}
              onChange={({ target }) =>
                changeWindowWays({ hours: hourWays.find((hours) => hours === target.value) ?? 'system' })
              }
            >
              {hourWays.map((hours) => (
                <option key={hours} value={hours}>
                  {windowWords.hourWays[hours]}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
    </section>
  );
}
