import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { units } from '#core/units/unit-table.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayWords } from '#renderer/format/moments.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { StartOver } from '#renderer/parts/start-over/start-over.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { AttributeChoice } from './attribute-choice.tsx';
import { BuildAside } from './build-aside.tsx';
import { canBeTasted, JarChoice } from './jar-choice.tsx';
import { TasterChoice } from './taster-choice.tsx';
import { firstDraft, readAmount, readDraft, stillThere, type TastingDraft } from './tasting-draft.ts';
import { type BuildDraft, useBuildDraft } from './use-build-draft.ts';
import { WayChoice } from './way-choice.tsx';
import { words } from './words.ts';
import './build.css';

function drawnSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
}

interface BuildFormProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly tasters: ValueOf<'tasters:list'>['tasters'];
  readonly isAlone: boolean;
}

/** The form once its draft is read. */
function BuildForm({ trial, tasters, isAlone }: BuildFormProps) {
  const tasted = trial.jarsWhole.filter(canBeTasted).map(({ id }) => id);
  const kept = useBuildDraft(words.draftName(trial.id, isAlone), () =>
    firstDraft(words.firstName(dayWords(new Date().toISOString())), tasted),
  );
  if (kept.draft === null) return null;
  const people = tasters.map(({ id }) => id);
  return (
    <FilledForm
      trial={trial}
      tasters={tasters}
      isAlone={isAlone}
      kept={kept}
      draft={stillThere(kept.draft, tasted, people)}
    />
  );
}

interface FilledFormProps extends BuildFormProps {
  readonly kept: BuildDraft;
  readonly draft: TastingDraft;
}

function FilledForm({ trial, tasters, isAlone, kept, draft }: FilledFormProps) {
  const measures = useMeasures();
  const [, go] = useLocation();
  const { change } = kept;
  const [seed] = useState(drawnSeed);
  const [isTried, setIsTried] = useState(false);
  const build = useRequest('tastings:build', { done: () => words.built, showsFailure: true });
  const volume = measures.system === 'us' ? units.flOz : units.mL;
  const temperature = measures.system === 'us' ? units.fahrenheit : units.celsius;
  const { input, faults } = readDraft(draft, trial.id, { volume, temperature }, seed);
  const shownFaults = isTried ? faults : {};
  const amount = readAmount(draft.amount, 'volume', volume);
  const isRanked = draft.way === 'ranked';
  const replicates = isRanked ? 1 : draft.replicates;
  const cups = draft.tasters.length * replicates;
  const labels = trial.jarsWhole.filter(({ id }) => draft.jars.includes(id)).map(({ label }) => label);

  function send() {
    setIsTried(true);
    if (input === null) return;
    build.mutate(input, {
      onSuccess: ({ tasting }) => {
        const next = isAlone ? `/tastings/${tasting}/alone` : `/tastings/${tasting}`;
        void kept.forget(false).then(() => go(next));
      },
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
          <h2>
            <Explained words={words.jars} />
          </h2>
          <JarChoice jars={trial.jarsWhole} chosen={draft.jars} onChange={(jars) => change({ jars: [...jars] })} />
          {faultLine('jars')}
        </section>
        <section className="subsection">
          <h2>
            <Explained words={isAlone ? words.you : words.tasters} />
          </h2>
          <TasterChoice
            tasters={tasters}
            chosen={draft.tasters}
            isAlone={isAlone}
            onChange={(chosen) => change({ tasters: [...chosen] })}
          />
          {faultLine('tasters')}
        </section>
        <section className="subsection">
          <h2>
            <Explained words={words.howServed} />
          </h2>
          <div className="field-grid">
            <Field
              label={words.amount(volume.symbol)}
              hint={
                typeof amount === 'number' && cups > 0
                  ? words.pours(measures.volume(amount * cups), cups)
                  : words.amountHint[measures.system]
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
            {isAlone || isRanked ? null : (
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
          <h2>
            <Explained words={words.way} />
          </h2>
          <WayChoice way={draft.way} onChange={(way) => change({ way })} />
          {isRanked ? (
            <p className="soft">
              <Explained words={words.rankedLead} />
            </p>
          ) : null}
        </section>
        {isRanked ? null : (
          <section className="subsection">
            <h2>
              <Explained words={words.attributes} />
            </h2>
            <p className="soft">
              <Explained words={words.attributesLead} />
            </p>
            <AttributeChoice
              attributes={draft.attributes}
              faults={shownFaults}
              onChange={(attributes) => change({ attributes: [...attributes] })}
            />
            {faultLine('attributes')}
          </section>
        )}
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
          <StartOver
            words={words}
            onForget={() => {
              setIsTried(false);
              void kept.forget(true);
            }}
          />
        </div>
        <p className="small soft">
          <Explained words={kept.isKept ? words.kept : words.notKept} />
        </p>
      </div>
      <BuildAside draft={{ ...draft, replicates }} labels={labels} seed={seed} />
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
