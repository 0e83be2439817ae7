import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { units } from '#core/units/unit-table.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayWords } from '#renderer/format/moments.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { AttributeChoice } from './attribute-choice.tsx';
import { canBeTasted, JarChoice } from './jar-choice.tsx';
import { PanelSight } from './panel-sight.tsx';
import { TasterChoice } from './taster-choice.tsx';
import { firstDraft, readAmount, readDraft, type TastingDraft } from './tasting-draft.ts';
import { words } from './words.ts';
import './build.css';

function drawnSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
}

/** Who must not taste what, as soon as jars and people are chosen. */
function EarlyWarnings({ draft }: { readonly draft: TastingDraft }) {
  const isAsked = draft.jars.length > 0 && draft.tasters.length > 0;
  const warned = useAnswer(
    'tastings:warn',
    { jars: [...draft.jars], tasters: [...draft.tasters] },
    { enabled: isAsked, keepLast: true },
  );
  if (!isAsked || warned.data === undefined) return null;
  const lines = warned.data.warnings.flatMap((one) => one.lines);
  return (
    <section className="subsection">
      <h2>{words.warnings}</h2>
      {lines.length === 0 ? <p className="soft">{words.noWarnings}</p> : null}
      {lines.map((line) => (
        <Caution key={line}>{line}</Caution>
      ))}
    </section>
  );
}

interface BuildFormProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly tasters: ValueOf<'tasters:list'>['tasters'];
  readonly isAlone: boolean;
}

function BuildForm({ trial, tasters, isAlone }: BuildFormProps) {
  const measures = useMeasures();
  const [, go] = useLocation();
  const [draft, setDraft] = useState(() =>
    firstDraft(
      words.firstName(dayWords(new Date().toISOString())),
      trial.jarsWhole.filter(canBeTasted).map(({ id }) => id),
    ),
  );
  const [seed] = useState(drawnSeed);
  const [isTried, setIsTried] = useState(false);
  const build = useRequest('tastings:build', { done: () => words.built, showsFailure: true });
  const volume = measures.system === 'us' ? units.flOz : units.mL;
  const temperature = measures.system === 'us' ? units.fahrenheit : units.celsius;
  const change = (part: Partial<TastingDraft>) => setDraft((before) => ({ ...before, ...part }));
  const { input, faults } = readDraft(draft, trial.id, { volume, temperature }, seed);
  const shownFaults = isTried ? faults : {};
  const amount = readAmount(draft.amount, 'volume', volume);
  const cups = draft.tasters.length * draft.replicates;

  function send() {
    setIsTried(true);
    if (input === null) return;
    build.mutate(input, {
      onSuccess: ({ tasting }) => go(isAlone ? `/tastings/${tasting}/alone` : `/tastings/${tasting}`),
    });
  }

  const faultLine = (field: 'jars' | 'tasters' | 'attributes') =>
    shownFaults[field] === undefined ? null : (
      <p className="field-fault" role="alert">
        {shownFaults[field]}
      </p>
    );

  return (
    <div className="build">
      <div className="build-choices">
        <section className="subsection">
          <h2>{words.jars}</h2>
          <JarChoice jars={trial.jarsWhole} chosen={draft.jars} onChange={(jars) => change({ jars })} />
          {faultLine('jars')}
        </section>
        <section className="subsection">
          <h2>{isAlone ? words.you : words.tasters}</h2>
          <TasterChoice
            tasters={tasters}
            chosen={draft.tasters}
            isAlone={isAlone}
            onChange={(chosen) => change({ tasters: chosen })}
          />
          {faultLine('tasters')}
        </section>
        <section className="subsection">
          <h2>{words.howServed}</h2>
          <div className="field-grid">
            <Field
              label={words.amount(volume.symbol)}
              hint={
                typeof amount === 'number' && cups > 0
                  ? words.pours(measures.volume(amount * cups), cups)
                  : words.amountHint
              }
              fault={shownFaults.amount}
            >
              {(wiring) => (
                <input
                  {...wiring}
                  inputMode="decimal"
                  value={draft.amount}
                  onChange={({ target }) => change({ amount: target.value })}
                />
              )}
            </Field>
            <Field
              label={words.temperature(temperature.symbol)}
              hint={words.temperatureHint}
              fault={shownFaults.temperature}
            >
              {(wiring) => (
                <input
                  {...wiring}
                  inputMode="decimal"
                  value={draft.temperature}
                  onChange={({ target }) => change({ temperature: target.value })}
                />
              )}
            </Field>
            {isAlone ? null : (
              <Field label={words.replicates}>
                {(wiring) => (
                  <select
                    {...wiring}
                    value={draft.replicates}
                    onChange={({ target }) => change({ replicates: Number(target.value) })}
                  >
                    {[1, 2, 3, 4].map((count) => (
                      <option key={count} value={count}>
                        {words.times(count)}
                      </option>
                    ))}
                  </select>
                )}
              </Field>
            )}
          </div>
        </section>
        <section className="subsection">
          <h2>{words.attributes}</h2>
          <p className="soft">{words.attributesLead}</p>
          <AttributeChoice
            attributes={draft.attributes}
            faults={shownFaults}
            onChange={(attributes) => change({ attributes })}
          />
          {faultLine('attributes')}
        </section>
        <Field label={words.name} fault={shownFaults.name}>
          {(wiring) => (
            <input
              {...wiring}
              maxLength={200}
              value={draft.name}
              onChange={({ target }) => change({ name: target.value })}
            />
          )}
        </Field>
        {build.error === null ? null : (
          <p className="field-fault" role="alert">
            {build.error.message}
          </p>
        )}
        {isTried && input === null ? <p className="field-fault">{words.mend}</p> : null}
        <div className="button-row">
          <Button weight="main" disabled={build.isPending} onClick={send}>
            {words.makeIt}
          </Button>
        </div>
      </div>
      <aside className="build-aside" aria-label={words.sight}>
        <section className="subsection">
          <h2>{words.sight}</h2>
          <PanelSight draft={draft} />
        </section>
        <EarlyWarnings draft={draft} />
      </aside>
    </div>
  );
}

/** Builds a tasting from the jars of a trial, for a panel or for one. */
export function BuildPage({ id, isAlone = false }: { readonly id: string; readonly isAlone?: boolean }) {
  const trial = useAnswer('trials:open', { trial: id });
  const tasters = useAnswer('tasters:list', {});
  return (
    <Answer of={trial}>
      {(value) => (
        <>
          <PageHead
            above={
              <>
                <Link href={`/trials/${id}/taste`}>{words.back}</Link>
                <span className="soft">{value.question}</span>
              </>
            }
            title={isAlone ? words.aloneTitle : words.buildTitle}
            lead={isAlone ? words.aloneLead : words.buildLead}
          />
          <Answer of={tasters}>
            {(people) => <BuildForm trial={value} tasters={people.tasters} isAlone={isAlone} />}
          </Answer>
        </>
      )}
    </Answer>
  );
}
