import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { counted } from '#renderer/format/counted.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { words } from './words.ts';

/** What was removed, and the way back. */
export function Bin() {
  const bin = useAnswer('bin:list', {});
  const restore = useRequest('bin:restore', { done: ({ rows }) => words.broughtBack(counted(rows, 'row')) });
  return (
    <Answer of={bin}>
      {({ entries }) =>
        entries.length === 0 ? (
          <p className="soft">
            <Explained words={words.binEmpty} />
          </p>
        ) : (
          <RowList label={words.bin}>
            {entries.map(({ step, at, summary, rows }) => (
              <Row
                key={step}
                title={capital(summary)}
                to={`/history/step/${step}`}
                facts={`${dayAndTime(at)}, ${counted(rows, 'row')}`}
                actions={
                  <Button
                    disabled={restore.isPending}
                    onClick={() => restore.mutate({ step })}
                    aria-label={`${words.bringBack}: ${summary}`}
                  >
                    {words.bringBack}
                  </Button>
                }
              />
            ))}
          </RowList>
        )
      }
    </Answer>
  );
}
