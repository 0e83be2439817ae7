import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayWords } from '#renderer/format/moments.ts';
import { useNow } from '#renderer/format/use-now.ts';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { buildInput, methodOf, type SetUp, servableJars, usualPair } from './set-up.ts';
import { ExpectationChoice, JarChoice, TasterChoice, WayChoice } from './set-up-choices.tsx';
import { WhatItCanShow } from './what-it-can-show.tsx';
import { testName, words } from './words.ts';

interface SetUpFormProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly tasters: ValueOf<'tasters:list'>['tasters'];
}

const mostRounds = 10;

/** Allergens and alcohol, before anything is poured. */
function Warnings({ jars, tasters }: { readonly jars: readonly string[]; readonly tasters: readonly string[] }) {
  const { data } = useAnswer(
    'tastings:warn',
    { jars: [...jars], tasters: [...tasters] },
    { enabled: tasters.length > 0, keepLast: true },
  );
  return data?.warnings.flatMap(({ lines }) => lines).map((line) => <Caution key={line}>{line}</Caution>);
}

/** How to serve, which jars, who tastes, how often; beside it what so many answers can show. */
export function SetUpForm({ trial, tasters }: SetUpFormProps) {
  const jars = servableJars(trial);
  const now = useNow();
  const [, go] = useLocation();
  const [setUp, setSetUp] = useState<SetUp>({
    way: 'triangle',
    ...usualPair(jars),
    asked: 'sweeter',
    expected: null,
    tasters: [],
    rounds: 1,
    name: '',
  });
  const build = useRequest('discriminations:build', { done: () => words.built, showsFailure: true });
  const change = (part: Partial<SetUp>) => setSetUp((before) => ({ ...before, ...part }));
  const usualName = testName(setUp.way, dayWords(new Date(now).toISOString()));

  if (jars.length < 2)
    return (
      <p className="soft">
        <Explained words={words.noJars} />
      </p>
    );
  if (tasters.length === 0) {
    return (
      <div className="apart-none">
        <p className="soft">
          <Explained words={words.noTasters} />
        </p>
        <ButtonLink to="/tasters">{words.addTasters}</ButtonLink>
      </div>
    );
  }

  function send(event: FormEvent) {
    event.preventDefault();
    const seed = crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
    const named = { ...setUp, name: setUp.name.trim() === '' ? usualName : setUp.name };
    build.mutate(buildInput(trial.id, named, seed), {
      onSuccess: ({ discrimination }) => go(`/telling-apart/${discrimination}`),
    });
  }

  const elsewhere = faultElsewhere(build.error, ['jarA', 'jarB', 'tasters', 'name', 'asked', 'rounds']);
  return (
    <form className="apart-form" onSubmit={send} noValidate>
      <WayChoice way={setUp.way} onChange={(way) => change({ way })} />
      <JarChoice setUp={setUp} jars={jars} failure={build.error} onChange={change} />
      {setUp.way === 'paired' ? (
        <ExpectationChoice setUp={setUp} jars={jars} failure={build.error} onChange={change} />
      ) : null}
      <TasterChoice
        all={tasters}
        chosen={setUp.tasters}
        fault={faultAt(build.error, 'tasters')}
        onChange={(chosen) => change({ tasters: chosen })}
      />
      <div className="field-grid">
        <Field label={words.rounds} hint={words.roundsHint} fault={faultAt(build.error, 'rounds')}>
          {(wiring) => (
            <select
              {...wiring}
              value={setUp.rounds}
              onChange={({ target }) => change({ rounds: Number(target.value) })}
            >
              {Array.from({ length: mostRounds }, (_, place) => place + 1).map((rounds) => (
                <option key={rounds} value={rounds}>
                  {rounds}
                </option>
              ))}
            </select>
          )}
        </Field>
        <Field label={words.name} hint={words.nameHint} fault={faultAt(build.error, 'name')}>
          {(wiring) => (
            <input
              {...wiring}
              value={setUp.name}
              placeholder={usualName}
              onChange={({ target }) => change({ name: target.value })}
            />
          )}
        </Field>
      </div>
      <section className="subsection" aria-labelledby="apart-can-show">
        <h3 id="apart-can-show">
          <Explained words={words.canShow} />
        </h3>
        <WhatItCanShow method={methodOf(setUp)} tasters={setUp.tasters.length} rounds={setUp.rounds} />
      </section>
      <Warnings jars={[setUp.jarA, setUp.jarB]} tasters={setUp.tasters} />
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={build.isPending || setUp.tasters.length === 0}>
          {words.build}
        </Button>
      </div>
    </form>
  );
}
