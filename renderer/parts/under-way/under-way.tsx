import { phrase } from '#core/words/phrase.ts';
import type { LongAnswer } from '#renderer/app/use-long-answer.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import './under-way.css';

const words = {
  stop: phrase`Stop`,
  stopped: phrase`Stopped before the end: nothing is said without it.`,
  again: phrase`Go on`,
  tryAgain: phrase`Try again`,
} as const;

interface UnderWayProps {
  readonly of: Omit<LongAnswer<unknown>, 'value' | 'isEarlier'>;
  /** What is being done. */
  readonly doing: string;
  /** What is said when it was stopped, where something else than an answer was being made. */
  readonly whenStopped?: string;
}

/** How far a long answer has come, with a way to stop it; or that it was stopped, or why it failed. */
export function UnderWay({ of: answer, doing, whenStopped }: UnderWayProps) {
  if (answer.wasStopped) {
    return (
      <div className="button-row">
        <p>{whenStopped ?? words.stopped}</p>
        <Button onClick={answer.again}>{whenStopped === undefined ? words.again : words.tryAgain}</Button>
      </div>
    );
  }
  if (answer.failure !== null) {
    return (
      <div className="button-row" role="alert">
        <p>{answer.failure.message}</p>
        <Button onClick={answer.again}>{words.tryAgain}</Button>
      </div>
    );
  }
  if (!answer.isUnderWay) return null;
  return (
    <div className="under-way answer-pending">
      <p role="status">{doing}</p>
      <progress value={answer.done} max={1} aria-label={doing} />
      <Button onClick={answer.stop}>{words.stop}</Button>
    </div>
  );
}
