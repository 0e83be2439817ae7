import { useSyncExternalStore } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { changeWindowWays, onWindowWays, windowWays } from '#renderer/format/window-ways.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { windowWords } from './window-words.ts';

/** A language as it calls itself. @example ownName('de') // 'Deutsch' */
function ownName(language: string): string {
  return new Intl.DisplayNames([language], { type: 'language', fallback: 'code' }).of(language) ?? language;
}

/** In which language this window speaks: English, or one of which there is a file of words. The page is read anew in it. */
export function LanguageChoice() {
  const { language } = useSyncExternalStore(onWindowWays, windowWays);
  const there = useAnswer('words:languages', {}).data?.languages ?? [];
  const known = ['en', ...there.map((one) => one.language)];
  // A language whose file went away stays to be seen as chosen.
  const choices = language === 'system' || known.includes(language) ? known : [...known, language];
  const problems = there.flatMap(({ language: name, problem }) => (problem === null ? [] : [{ name, problem }]));
  return (
    <>
      <Field label={windowWords.language} hint={windowWords.languageHint}>
        {(wiring) => (
          <select
            {...wiring}
            value={language}
            onChange={({ target }) => {
              changeWindowWays({ language: target.value });
              location.reload();
            }}
          >
            <option value="system">{windowWords.languageOfSystem}</option>
            {choices.map((one) => (
              <option key={one} value={one} lang={one}>
                {ownName(one)}
              </option>
            ))}
          </select>
        )}
      </Field>
      {problems.map(({ name, problem }) => (
        <p key={name} className="soft small">
          {problem}
        </p>
      ))}
    </>
  );
}
