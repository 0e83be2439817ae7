import { type FormEvent, useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { words } from './words.ts';

/** Erases a taster for good; it can't be undone, so it is asked twice. */
export function EraseTaster() {
  const tasters = useAnswer('tasters:list', {});
  const erase = useRequest('tasters:erase', { showsFailure: true });
  const [taster, setTaster] = useState('');
  const [isSure, setSure] = useState(false);

  function send(event: FormEvent) {
    event.preventDefault();
    if (!isSure) {
      setSure(true);
      return;
    }
    setSure(false);
    setTaster('');
    erase.mutate({ taster });
  }

  return (
    <Answer of={tasters}>
      {({ tasters: list }) =>
        list.length === 0 ? (
          <p className="soft">
            <Explained words={words.noTasters} />
          </p>
        ) : (
          <form className="form data-form" onSubmit={send}>
            <p>
              <Explained words={words.eraseLead} />
            </p>
            <Field label={words.eraseWho}>
              {(wiring) => (
                <select
                  {...wiring}
                  value={taster}
                  onChange={({ target }) => {
                    setTaster(target.value);
                    setSure(false);
                  }}
                >
                  <option value="">{words.eraseNobody}</option>
                  {list.map(({ id, name }) => (
                    <option key={id} value={id}>
                      {name}
                    </option>
                  ))}
                </select>
              )}
            </Field>
            <div className="button-row">
              <Button type="submit" disabled={taster === '' || erase.isPending}>
                {isSure ? words.eraseSure : words.erase}
              </Button>
            </div>
            <div role="status" className="data-told">
              {erase.data === undefined ? null : (
                <p>
                  {words.erased(erase.data.name)}{' '}
                  {erase.data.backups > 0 ? words.erasedBackups(erase.data.backups) : ''}
                </p>
              )}
              {erase.error === null ? null : <p className="field-fault">{erase.error.message}</p>}
            </div>
          </form>
        )
      }
    </Answer>
  );
}
