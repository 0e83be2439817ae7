import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayWords, timeWords } from '#renderer/format/moments.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { sipWords } from '#renderer/parts/sip-entry/read-sip.ts';
import { SipEntry, SipHint } from '#renderer/parts/sip-entry/sip-entry.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { sipsByDay } from './sips-by-day.ts';
import { words } from './words.ts';
import './trial-sips.css';

type Sip = ValueOf<'sips:byTrial'>['sips'][number];

function SipLine({ sip }: { readonly sip: Sip }) {
  const remove = useRequest('entries:remove', { done: () => words.sipRemoved });
  return (
    <li className="sip-line">
      <strong>{sip.label}</strong>
      <span>
        {sipWords(sip)}
        {sip.note === null ? null : <span className="soft"> {sip.note}</span>}
      </span>
      <span className="soft small">
        {words.dayOf(Math.floor(sip.day))}, {timeWords(sip.takenAt)}
      </span>
      <Button
        weight="quiet"
        disabled={remove.isPending}
        aria-label={words.removeSip(sip.label, dayWords(sip.takenAt))}
        onClick={() => remove.mutate({ kind: 'sip', id: sip.id })}
      >
        {words.takeOut}
      </Button>
    </li>
  );
}

function SipDays({ sips }: { readonly sips: readonly Sip[] }) {
  if (sips.length === 0)
    return (
      <p className="soft">
        <Explained words={words.noSips} />
      </p>
    );
  return sipsByDay(sips).map(({ day, sips: ofDay }) => (
    <div key={day} className="sip-day">
      <h4 className="sip-date">{day}</h4>
      <ul>
        {ofDay.map((sip) => (
          <SipLine key={sip.id} sip={sip} />
        ))}
      </ul>
    </div>
  ));
}

interface TrialSipsProps {
  readonly trial: string;
  readonly jars: readonly { readonly id: string; readonly label: string; readonly levelName: string }[];
}

/** The maker's own daily taste of one jar, apart from the panel's scores, and the sips so far by day. */
export function TrialSips({ trial, jars }: TrialSipsProps) {
  const sips = useAnswer('sips:byTrial', { trial });
  const [chosen, setChosen] = useState(jars[0]?.id ?? '');
  const jar = jars.find(({ id }) => id === chosen) ?? jars[0];
  return (
    <section className="section">
      <h2>
        <Explained words={words.sips} />
      </h2>
      <p className="soft">
        <Explained words={words.sipsLead} />
      </p>
      <div className="sip-jar">
        <Field label={words.whichJar}>
          {(wiring) => (
            <select {...wiring} value={jar?.id} onChange={({ target }) => setChosen(target.value)}>
              {jars.map(({ id, label, levelName }) => (
                <option key={id} value={id}>
                  {words.jarOption(label, levelName)}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <SipHint />
      {jar === undefined ? null : <SipEntry key={jar.id} jar={jar} />}
      <div className="subsection">
        <h3>
          <Explained words={words.sipsByDay} />
        </h3>
        <Answer of={sips}>{(value) => <SipDays sips={value.sips} />}</Answer>
      </div>
      <div className="button-row">
        <ButtonLink to="/sips" weight="quiet">
          {words.allSips}
        </ButtonLink>
      </div>
    </section>
  );
}
