import { useMutation, useQueryClient } from '@tanstack/react-query';
import { ask } from '#renderer/app/ask.ts';
import { counted } from '#renderer/format/counted.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { OpenBeside } from './open-beside.tsx';
import { sizeWords } from './size-words.ts';
import { words } from './words.ts';

/** Backup and check: both only read, and both say what they saw. */
export function Care() {
  const client = useQueryClient();
  const backup = useMutation<ValueOf<'store:backup'>, Failure>({
    mutationFn: () => ask('store:backup', {}),
    onSuccess: () => void client.invalidateQueries({ queryKey: ['backups:list'] }),
  });
  const check = useMutation<ValueOf<'store:check'>, Failure>({ mutationFn: () => ask('store:check', {}) });
  const rescue = useMutation<ValueOf<'store:rescue'>, Failure>({ mutationFn: () => ask('store:rescue', {}) });
  const report = useMutation<void, Failure | Error>({
    mutationFn: async () => navigator.clipboard.writeText((await ask('report:read', {})).text),
  });
  return (
    <>
      <div className="button-row">
        <Button disabled={backup.isPending} onClick={() => backup.mutate()}>
          {backup.isPending ? words.backingUp : words.backUp}
        </Button>
        <Button disabled={check.isPending} onClick={() => check.mutate()}>
          {check.isPending ? words.checking : words.check}
        </Button>
        <Button weight="quiet" disabled={report.isPending} onClick={() => report.mutate()}>
          {words.report}
        </Button>
      </div>
      <div role="status" className="data-told">
        {report.isSuccess ? (
          <p>
            <Explained words={words.reported} />
          </p>
        ) : null}
        {report.isError ? <p className="field-fault">{words.notReported}</p> : null}
        {backup.data === undefined ? null : (
          <p>
            {words.backedUp} <span className="data-path">{backup.data.file}</span> ({sizeWords(backup.data.bytes)})
          </p>
        )}
        {check.data === undefined ? null : check.data.ok ? (
          <p>
            <Explained words={words.sound} />
          </p>
        ) : (
          <>
            <p>
              <Explained words={words.problems} />
            </p>
            <ul>
              {check.data.problems.map((problem) => (
                <li key={problem}>{problem}</li>
              ))}
            </ul>
            <p>
              <Explained words={words.rescueOffer} />
            </p>
            <div className="button-row">
              <Button disabled={rescue.isPending} onClick={() => rescue.mutate()}>
                {rescue.isPending ? words.rescuing : words.rescue}
              </Button>
            </div>
          </>
        )}
        {rescue.data === undefined ? null : (
          <>
            <p>
              {words.rescued(counted(rescue.data.rows, 'row'), String(rescue.data.lost))}{' '}
              <span className="data-path">{rescue.data.file}</span>
            </p>
            <OpenBeside file={rescue.data.file} />
          </>
        )}
        {[backup.error, check.error, rescue.error].map((failure) =>
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
