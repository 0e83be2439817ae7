import { useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Orders = ValueOf<'tastings:open'>['orders'];

const words = { label: phrase`For whom`, everybody: phrase`everybody` } as const;

export interface ForWhom {
  /** The serving orders of whom is printed for. */
  readonly orders: Orders;
  readonly all: Orders;
  readonly whom: string;
  readonly choose: (taster: string) => void;
}

/** For which of a tasting's tasters something is printed: for all until one is chosen. */
export function useForWhom(all: Orders): ForWhom {
  const [whom, choose] = useState('');
  return { orders: all.filter(({ taster }) => whom === '' || taster === whom), all, whom, choose };
}

export function ForWhomField({ of, fault }: { readonly of: ForWhom; readonly fault?: string | undefined }) {
  return (
    <Field label={words.label} fault={fault}>
      {(wiring) => (
        <select {...wiring} value={of.whom} onChange={({ target }) => of.choose(target.value)}>
          <option value="">{words.everybody}</option>
          {of.all.map(({ taster, name }) => (
            <option key={taster} value={taster}>
              {name}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
