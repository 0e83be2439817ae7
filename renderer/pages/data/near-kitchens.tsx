import { useState } from 'react';
import { counting } from '#core/words/figures.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dateWords, timeWords } from '#renderer/format/moments.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { ShowMore } from '#renderer/parts/row-list/show-more.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { nearWords } from './near-words.ts';
import { plainName } from './plain-name.ts';
import { sizeWords } from './size-words.ts';
import { words } from './words.ts';

const fewShown = 5;

type Folder = ValueOf<'kitchens:near'>['folders'][number];

interface PickProps {
  /** Copies what can be read of that file. */
  readonly onCopy: (file: string) => void;
  readonly isBusy: boolean;
}

function FolderList({ folder: { folder, kitchens, more }, onCopy, isBusy }: PickProps & { readonly folder: Folder }) {
  const open = useRequest('kitchen:openNear', { done: () => words.openedNew, showsFailure: true });
  const [isLong, setIsLong] = useState(false);
  return (
    <div className="near-folder">
      <h4 className="data-path">
        <bdi>{plainName(folder)}</bdi>
      </h4>
      <RowList label={nearWords.inFolder(plainName(folder))}>
        {kitchens.slice(0, isLong ? undefined : fewShown).map(({ file, name, bytes, at }) => (
          <Row
            key={file}
            title={<bdi className="data-path">{plainName(name)}</bdi>}
            facts={nearWords.facts(`${dateWords(at)}, ${timeWords(at)}`, sizeWords(bytes))}
            actions={
              <>
                <Button
                  disabled={isBusy || open.isPending}
                  aria-label={nearWords.openOf(plainName(name))}
                  onClick={() => open.mutate({ file })}
                >
                  {nearWords.open}
                </Button>
                <Button
                  weight="quiet"
                  disabled={isBusy || open.isPending}
                  aria-label={nearWords.copyOf(plainName(name))}
                  onClick={() => onCopy(file)}
                >
                  {nearWords.copy}
                </Button>
              </>
            }
          />
        ))}
      </RowList>
      {isLong || kitchens.length <= fewShown ? null : (
        <ShowMore onMore={() => setIsLong(true)}>{nearWords.older}</ShowMore>
      )}
      {more === 0 || !isLong ? null : <p className="soft small">{nearWords.more(more, counting(more))}</p>}
      {open.error === null ? null : (
        <p className="field-fault" role="alert">
          {open.error.message} {nearWords.copyInstead}
        </p>
      )}
    </div>
  );
}

function Listed({ folders, onCopy, isBusy }: PickProps & { readonly folders: readonly Folder[] }) {
  const filled = folders.filter(({ kitchens }) => kitchens.length > 0);
  const closed = folders.filter(({ isReadable }) => !isReadable);
  return (
    <>
      {filled.length === 0 ? (
        <p className="soft">
          <Explained words={nearWords.none} />
        </p>
      ) : null}
      {filled.map((folder) => (
        <FolderList key={folder.folder} folder={folder} onCopy={onCopy} isBusy={isBusy} />
      ))}
      {closed.length === 0 ? null : (
        <div className="data-told" role="note">
          <p>
            <Explained words={nearWords.unreadable} />
          </p>
          <ul>
            {closed.map(({ folder }) => (
              <li key={folder} className="data-path">
                <bdi>{plainName(folder)}</bdi>
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

/** The system's own dialog, where the window has one. */
function ChooseFile({ onCopy, isBusy }: PickProps) {
  const choose = useRequest('kitchens:choose');
  return (
    <div className="button-row">
      <Button
        disabled={isBusy || choose.isPending}
        onClick={() => choose.mutate({}, { onSuccess: ({ file }) => (file === null ? undefined : onCopy(file)) })}
      >
        {nearWords.choose}
      </Button>
    </div>
  );
}

/** Kitchens' files to pick from: by the system's dialog, or from the folders where they mostly lie. */
export function NearKitchens({ onCopy, isBusy }: PickProps) {
  const near = useAnswer('kitchens:near', {});
  return (
    <Answer of={near}>
      {({ dialog, folders }) =>
        dialog ? (
          <ChooseFile onCopy={onCopy} isBusy={isBusy} />
        ) : (
          <>
            <p className="soft">
              <Explained words={nearWords.lead} />
            </p>
            <Listed folders={folders} onCopy={onCopy} isBusy={isBusy} />
            <div className="button-row">
              <Button weight="quiet" disabled={near.isFetching} onClick={() => void near.refetch()}>
                {nearWords.again}
              </Button>
            </div>
          </>
        )
      }
    </Answer>
  );
}
