import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { glued } from '#renderer/format/glued.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { OpenBeside } from './open-beside.tsx';
import { sizeWords } from './size-words.ts';
import { words } from './words.ts';

/** The kitchen's backups, and the way from one to a new kitchen in two clicks. */
export function Backups() {
  const backups = useAnswer('backups:list', {});
  const restore = useRequest('backups:restore', { showsFailure: true });
  const [asked, setAsked] = useState<string | null>(null);
  return (
    <Answer of={backups}>
      {({ folder, copies, backups: list }) => (
        <>
          <p>
            {glued(words.backupsLead)} <span className="data-path">{folder}</span>
          </p>
          {copies.length === 0 ? null : (
            <div className="data-told" role="note">
              <p>
                <Explained words={words.strayCopies} />
              </p>
              <ul>
                {copies.map((name) => (
                  <li key={name} className="data-path">
                    {name}
                  </li>
                ))}
              </ul>
            </div>
          )}
          <div role="status" className="data-told">
            {restore.data === undefined ? null : (
              <>
                <p>
                  {words.restored} <span className="data-path">{restore.data.file}</span>. {words.restoredNext}
                </p>
                <OpenBeside file={restore.data.file} />
              </>
            )}
            {restore.error === null ? null : <p className="field-fault">{restore.error.message}</p>}
          </div>
          {list.length === 0 ? (
            <p className="soft">
              <Explained words={words.noBackups} />
            </p>
          ) : (
            <RowList label={words.backups}>
              {list.map(({ name, kind, at, bytes }) => (
                <Row
                  key={name}
                  title={dayAndTime(at)}
                  facts={`${words.backupKinds[kind]}, ${sizeWords(bytes)}`}
                  actions={
                    <Button
                      disabled={restore.isPending}
                      aria-label={`${asked === name ? words.restoreSure : words.restore}: ${dayAndTime(at)}`}
                      onClick={() => {
                        if (asked !== name) {
                          setAsked(name);
                          return;
                        }
                        setAsked(null);
                        restore.mutate({ name });
                      }}
                    >
                      {asked === name ? words.restoreSure : words.restore}
                    </Button>
                  }
                />
              ))}
            </RowList>
          )}
        </>
      )}
    </Answer>
  );
}
