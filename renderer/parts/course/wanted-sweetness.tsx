import { useState } from 'react';
import { typedNumber } from '#renderer/format/number-field.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { words } from './words.ts';
import './course-parts.css';

/** The wanted sweetness as typed, and as a number once it is one. */
export interface WantedSweetness {
  readonly text: string;
  readonly brix: number | null;
  readonly fault: string | undefined;
  readonly type: (text: string) => void;
}

export function useWantedSweetness(): WantedSweetness {
  const [text, type] = useState('');
  const read = typedNumber(text.replace(/\s*(°\s*bx|brix)\s*$/i, ''));
  const brix = read.kind === 'number' && read.value > 0 && read.value <= 80 ? read.value : null;
  return { text, brix, type, fault: read.kind !== 'none' && brix === null ? words.wantedFault : undefined };
}

/** One short field: how sweet it should be. */
export function WantedSweetnessField({ wanted }: { readonly wanted: WantedSweetness }) {
  return (
    <div className="wanted-sweetness no-print">
      <Field label={words.wanted} hint={words.wantedHint} fault={wanted.fault}>
        {(wiring) => (
          <input
            {...wiring}
            autoComplete="off"
            inputMode="decimal"
            value={wanted.text}
            onChange={({ target }) => wanted.type(target.value)}
          />
        )}
      </Field>
    </div>
  );
}
