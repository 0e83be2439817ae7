import { type ReactNode, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Findings = ValueOf<'findings:read'>;
type Taster = Findings['tasters'][number];

interface SetAsideProps {
  readonly trial: string;
  readonly taster: Taster;
  readonly done: () => void;
}

/** Asks why before anybody's scores are left out. */
function SetAsideForm({ trial, taster, done }: SetAsideProps) {
  const [reason, setReason] = useState('');
  const setAside = useRequest('tasters:setAside', { done: () => words.isAside(taster.name) });
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (reason.trim() !== '') setAside.mutate({ trial, taster: taster.id, reason }, { onSuccess: done });
      }}
    >
      <Field label={words.whyAside(taster.name)} hint={words.whyAsideHint}>
        {(wiring) => <input {...wiring} value={reason} onChange={({ target }) => setReason(target.value)} />}
      </Field>
      <div className="button-row">
        <Button type="submit" disabled={reason.trim() === ''}>
          {words.setAside}
        </Button>
        <Button weight="quiet" onClick={done}>
          {words.keep}
        </Button>
      </div>
    </form>
  );
}

function TasterRow({ trial, taster }: { readonly trial: string; readonly taster: Taster }) {
  const [isAsking, setAsking] = useState(false);
  const bringBack = useRequest('tasters:bringBack', { done: () => words.countsAgain(taster.name) });
  const lines = (
    <>
      {taster.words.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {taster.setAside === null ? null : <p>{words.asideBecause(taster.setAside)}</p>}
      {isAsking ? <SetAsideForm trial={trial} taster={taster} done={() => setAsking(false)} /> : null}
    </>
  );
  const action =
    taster.setAside === null ? (
      isAsking ? null : (
        <Button weight="quiet" aria-label={words.setAsideWho(taster.name)} onClick={() => setAsking(true)}>
          {words.setAside}
        </Button>
      )
    ) : (
      <Button
        weight="quiet"
        aria-label={words.countWho(taster.name)}
        onClick={() => bringBack.mutate({ trial, taster: taster.id })}
      >
        {words.count}
      </Button>
    );
  return <Row title={taster.name} facts={lines} actions={<span className="no-print">{action}</span>} />;
}

interface TastersFormProps {
  readonly trial: string;
  readonly findings: Findings;
  /** Their charts. */
  readonly children: ReactNode;
}

/** How each taster is doing, gently, and who is not counted and why. */
export function TastersForm({ trial, findings, children }: TastersFormProps) {
  return (
    <section className="section">
      <h2>
        <Explained words={words.tasters} />
      </h2>
      {findings.withEverybody === null ? null : <p>{words.withEverybody(findings.withEverybody)}</p>}
      {children}
      <details open={findings.withEverybody !== null}>
        <summary>{words.tastersMore}</summary>
        <RowList label={words.tasters}>
          {findings.tasters.map((taster) => (
            <TasterRow key={taster.id} trial={trial} taster={taster} />
          ))}
        </RowList>
      </details>
    </section>
  );
}
