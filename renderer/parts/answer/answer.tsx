import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import type { Failure } from '#shared/failure.ts';
import './answer.css';

interface AnswerProps<Value> {
  readonly of: UseQueryResult<Value, Failure>;
  readonly children: (value: Value) => ReactNode;
}

/** Shows an answer when it is there, and otherwise says plainly that it is being read or why it can't be. */
export function Answer<Value>({ of: answer, children }: AnswerProps<Value>) {
  if (answer.data !== undefined) return children(answer.data);
  if (answer.error !== null) {
    return (
      <div className="answer-fault" role="alert">
        <p>{answer.error.message}</p>
        <Button onClick={() => void answer.refetch()}>{phrase`Try again`}</Button>
      </div>
    );
  }
  return <p className="answer-pending soft" role="status">{phrase`Reading…`}</p>;
}
