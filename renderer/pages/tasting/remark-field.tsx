import { useEffect, useRef, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Tape } from '#renderer/parts/tape/tape.tsx';
import { missedRemark, saysMissed, withoutMissed } from '#shared/missed-sample.ts';
import { words } from './words.ts';

interface RemarkFieldProps {
  readonly tasting: string;
  readonly taster: string;
  readonly code: string;
  /** The remark as it is stored. */
  readonly stored: string;
  readonly hasScores: boolean;
  readonly isReadOnly: boolean;
}

/** What a taster says of one sample, and whether they missed it. */
export function RemarkField({ tasting, taster, code, stored, hasScores, isReadOnly }: RemarkFieldProps) {
  const isMissed = saysMissed(stored);
  const [typed, setTyped] = useState<string | null>(null);
  const save = useRequest('remarks:save', { showsFailure: true });
  const { mutate } = save;
  const waits = useRef<string | null>(null);

  function keep(said: string | null): void {
    if (said === null || said.trim() === withoutMissed(stored)) {
      setTyped(null);
      waits.current = null;
      return;
    }
    waits.current = null;
    const remark = isMissed ? missedRemark(said.trim()) : said.trim();
    mutate(
      { tasting, taster, sample: code, words: remark },
      { onSuccess: () => setTyped((now) => (now === said ? null : now)) },
    );
  }

  const keepLast = useRef(keep);
  keepLast.current = keep;
  // Leaving the page keeps what was said.
  useEffect(() => () => keepLast.current(waits.current), []);

  const mayMiss = !hasScores && !isReadOnly;
  const said = typed ?? withoutMissed(stored);
  return (
    <>
      {isReadOnly && said === '' ? null : (
        <input
          type="text"
          data-remark
          className="remark"
          aria-label={words.remarkOn(code)}
          placeholder={isReadOnly ? '' : words.remark}
          maxLength={3900}
          readOnly={isReadOnly}
          value={said}
          onChange={({ target }) => {
            setTyped(target.value);
            waits.current = target.value;
          }}
          onBlur={() => keep(waits.current)}
        />
      )}
      {isMissed && !hasScores ? (
        <span className="remark-missed">
          <Tape small>{words.missed}</Tape> <span className="soft small">{words.missedLine}</span>
        </span>
      ) : null}
      {mayMiss || (isMissed && !isReadOnly) ? (
        <Button
          weight="quiet"
          aria-pressed={isMissed}
          aria-label={`${words.miss}: ${code}`}
          onClick={() => {
            waits.current = null;
            mutate({ tasting, taster, sample: code, words: isMissed ? said.trim() : missedRemark(said.trim()) });
          }}
        >
          {isMissed ? words.notMissed : words.miss}
        </Button>
      ) : null}
      {save.error === null ? null : (
        <span className="score-fault small" role="alert">
          {save.error.message}
        </span>
      )}
    </>
  );
}
