import { type FormEvent, useId, useState } from 'react';
import { useLocation } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { versionDifferences } from '#renderer/parts/recipe/version-differences.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Draft = ValueOf<'recipes:preview'>;

/** What this version changes, where the recipe exists already. */
function NextVersion({ recipe, draft }: { readonly recipe: string; readonly draft: Draft | undefined }) {
  const { data } = useAnswer('recipes:open', { recipe });
  if (data === undefined) return null;
  const last = data.versionList.find(({ number }) => number === data.latest);
  const differences = last === undefined || draft === undefined ? [] : versionDifferences(last, draft);
  return (
    <div role="status">
      <p>{words.becomes(data.name, data.latest + 1)}</p>
      {(differences.length === 0 ? [words.same] : differences).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}

interface PromoteFormProps {
  readonly trial: string;
  readonly level: string | null;
  readonly draft: Draft | undefined;
  /** Stands in the name's field until somebody writes there. */
  readonly suggestion: string;
}

/** Name and reason of the new house recipe; writes it down and goes there. */
export function PromoteForm({ trial, level, draft, suggestion }: PromoteFormProps) {
  const id = useId();
  const [, go] = useLocation();
  const [typed, setTyped] = useState<string | null>(null);
  const [why, setWhy] = useState('');
  const [lack, setLack] = useState<'name' | 'level' | null>(null);
  const recipes = useAnswer('recipes:list', {});
  const name = typed ?? suggestion;
  const promote = useRequest('recipes:promote', {
    showsFailure: true,
    done: ({ version }) => words.done(name.trim(), version),
  });
  const known = recipes.data?.recipes.find((one) => one.name.toLowerCase() === name.trim().toLowerCase());

  function write(event: FormEvent) {
    event.preventDefault();
    const missing = level === null ? 'level' : name.trim() === '' ? 'name' : null;
    setLack(missing);
    if (missing !== null || level === null) return;
    promote.mutate(
      { trial, level, name: name.trim(), ...(why.trim() === '' ? {} : { why: why.trim() }) },
      { onSuccess: ({ recipe }) => go(`/house-recipes/${recipe}`) },
    );
  }

  return (
    <form className="form promote-form" onSubmit={write} aria-labelledby={`${id}-head`} noValidate>
      <h2 id={`${id}-head`}>{words.form}</h2>
      <Field
        label={words.name}
        hint={words.nameHint}
        fault={lack === 'name' ? words.needsName : faultAt(promote.error, 'name')}
      >
        {(wiring) => (
          <input
            {...wiring}
            type="text"
            value={name}
            maxLength={200}
            onChange={({ target }) => setTyped(target.value)}
          />
        )}
      </Field>
      {known === undefined ? null : <NextVersion recipe={known.id} draft={draft} />}
      <Field label={words.why} hint={words.whyHint} fault={faultAt(promote.error, 'why')}>
        {(wiring) => (
          <textarea {...wiring} rows={2} value={why} maxLength={4000} onChange={({ target }) => setWhy(target.value)} />
        )}
      </Field>
      {lack === 'level' || faultElsewhere(promote.error, ['name', 'why']) !== undefined ? (
        <p className="field-fault" role="alert">
          {lack === 'level' ? words.needsLevel : faultElsewhere(promote.error, ['name', 'why'])}
        </p>
      ) : null}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={promote.isPending}>
          {promote.isPending ? words.writing : words.write}
        </Button>
      </div>
    </form>
  );
}
