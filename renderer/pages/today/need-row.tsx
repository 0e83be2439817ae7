import { useState } from 'react';
import { Link } from 'wouter';
import { hoursBetween } from '#core/trial/moment.ts';
import { dayAndTime, spanWords, timeWords } from '#renderer/format/moments.ts';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { type Need, needDoor, needOf, needTitle } from './need.ts';
import { PutOffPart, WakeButton } from './put-off-part.tsx';
import { ReadingsPart } from './readings-part.tsx';
import { useNeedAct } from './use-need-act.ts';
import { needWords, words } from './words.ts';

function whenWords({ when, dueAt, putOff }: Need, now: number): string {
  if (putOff !== null) return words.until(dayAndTime(putOff.until));
  if (when === 'overdue') return words.late(spanWords(hoursBetween(dueAt, new Date(now).toISOString())));
  return when === 'today' ? timeWords(dueAt) : dayAndTime(dueAt);
}

function NeedAct({ need }: { readonly need: Need }) {
  const { act, isBusy } = useNeedAct();
  if (need.kind === 'taste') {
    return (
      <ButtonLink to={needDoor(need)} weight={need.when === 'later' ? 'plain' : 'main'}>
        {needWords.taste.act(1)}
      </ButtonLink>
    );
  }
  const said = needWords[need.kind].act(Math.max(1, need.jars.length));
  return (
    <Button
      weight={need.when === 'later' ? 'plain' : 'main'}
      disabled={isBusy}
      aria-label={`${said}: ${needOf(need)}`}
      onClick={() => act(need)}
    >
      {said}
    </Button>
  );
}

/** One thing that is wanted: what, of what, since when; done in one touch, put off in two, a reading written down in place. */
export function NeedRow({ need, now }: { readonly need: Need; readonly now: number }) {
  const [isPuttingOff, setIsPuttingOff] = useState(false);
  const { kind, when, trial, jars, putOff } = need;
  const isNow = when === 'overdue' || when === 'today';
  const mayBeRead = isNow && (kind === 'look' || kind === 'stir' || kind === 'pull');
  return (
    <li className="row need">
      <div className="row-words">
        <p className="row-title">
          <Link href={needDoor(need)}>{needTitle(need)}</Link> <SampleMark when={need.isSample} />
        </p>
        <div className="row-facts">
          {trial === null ? null : <span>{trial.question}</span>}{' '}
          {putOff?.reason == null ? null : <span>{putOff.reason}</span>}
        </div>
        {need.basis === null || !isNow ? null : <p className="soft small">{need.basis}</p>}
      </div>
      <div className="row-end figures">{whenWords(need, now)}</div>
      <div className="button-row">
        {putOff === null ? <NeedAct need={need} /> : <WakeButton need={need} />}
        {isNow ? (
          <Button
            weight="quiet"
            aria-expanded={isPuttingOff}
            aria-label={words.laterFor(needTitle(need))}
            onClick={() => setIsPuttingOff(!isPuttingOff)}
          >
            {words.later_}
          </Button>
        ) : null}
      </div>
      {mayBeRead || isPuttingOff ? (
        <div className="need-more">
          {mayBeRead ? <ReadingsPart jars={jars} /> : null}
          {isPuttingOff ? <PutOffPart need={need} onDone={() => setIsPuttingOff(false)} /> : null}
        </div>
      ) : null}
    </li>
  );
}
