import { useMutation } from '@tanstack/react-query';
import { ask } from '#renderer/app/ask.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { sizeWords } from './size-words.ts';
import { words } from './words.ts';

/** Backup and check: both only read, and both say what they saw. */
export function Care() {
  const backup = useMutation<ValueOf<'store:backup'>, Failure>({ mutationFn: () => ask('store:backup', {}) });
  const check = useMutation<ValueOf<'store:check'>, Failure>({ mutationFn: () => ask('store:check', {}) });
  return (
    <>
      <div className="button-row">
        <Button disabled={backup.isPending} onClick={() => backup.mutate()}>
          {backup.isPending ? words.backingUp : words.backUp}
        </Button>
        <Button disabled={check.isPending} onClick={() => check.mutate()}>
          {check.isPending ? words.checking : words.check}
        </Button>
      </div>
      <div role="status" className="data-told">
        {backup.data === undefined ? null : (
          <p>
            {words.backedUp} <span className="data-path">{backup.data.file}</span> ({sizeWords(backup.data.bytes)})
          </p>
        )}
        {check.data === undefined ? null : check.data.ok ? (
          <p>{words.sound}</p>
        ) : (
          <>
            <p>{words.problems}</p>
            <ul>
              {check.data.problems.map((problem) => (
                <li key={problem}>{problem}</li>
              ))}
            </ul>
          </>
        )}
        {[backup.error, check.error].map((failure) =>
          failure === null ? null : (
            <p key={failure.message} className="field-fault">
              {failure.message}
            </p>
          ),
        )}
      </div>
    </>
  );
}
