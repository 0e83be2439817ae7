import { phrase } from '#core/words/phrase.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { UnderWay } from '#renderer/parts/under-way/under-way.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { judgementSentence, rightWords, shareWords } from './judgement-words.ts';
import { useJudgement } from './use-judgement.ts';
import { words } from './words.ts';
import './judgement.css';

type Judged = ValueOf<'profiles:judge'>;

/** Each level with a bar for how often it would come out first. */
function LevelBars({ levels, winner }: Judged) {
  return (
    <ul className="judged-bars" aria-label={words.closest}>
      {levels.map((each) => (
        <li key={each.level} className={each.level === winner ? 'is-closest' : undefined}>
          <span className="judged-bar-name">{each.level}</span>
          <span className="judged-bar" aria-hidden="true">
            <span style={{ '--share': each.winShare }} />
          </span>
          <span className="judged-bar-words figures">{phrase`first in ${shareWords(each.winShare)}`}</span>
        </li>
      ))}
    </ul>
  );
}

function JudgedLevels({ judged }: { readonly judged: Judged }) {
  if (judged.needs !== null) return <p className="soft">{judged.needs}</p>;
  const sentence = judgementSentence(judged);
  if (sentence === null) return <p>{words.noneFits}</p>;
  return (
    <>
      <p className="judged-sentence">{sentence}</p>
      <LevelBars {...judged} />
      <details>
        <summary>{words.table}</summary>
        <DataTable
          caption={words.closest}
          rows={judged.levels}
          rowKey={({ level }) => level}
          columns={[
            { head: phrase`Level`, cell: ({ level }) => level },
            { head: phrase`How right (95 % interval)`, cell: rightWords, isFigure: true },
            { head: phrase`First in panels`, cell: ({ winShare }) => shareWords(winShare), isFigure: true },
          ]}
        />
        <p className="small soft">{phrase`How right: 0 will not do, 100 meets every wish fully; one wish that is not met at all spoils the whole. The panel is drawn again taster by taster, 5,000 times. It tells nothing about doubt in the jars themselves.`}</p>
      </details>
    </>
  );
}

/** Which level comes closest to the wishes, once something was tasted and revealed. */
export function Judgement({ trial, isReady }: { readonly trial: string; readonly isReady: boolean }) {
  const judgement = useJudgement(trial, isReady);
  if (!isReady) return null;
  return (
    <>
      <UnderWay of={judgement} doing={words.judging} />
      {judgement.value === undefined ? null : <JudgedLevels judged={judgement.value} />}
    </>
  );
}
