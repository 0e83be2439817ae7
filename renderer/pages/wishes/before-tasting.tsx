import { useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { PanelSight } from '#renderer/parts/panel-sight/panel-sight.tsx';
import { words } from './words.ts';

interface NumberChoiceProps {
  readonly label: string;
  readonly value: number;
  readonly most: number;
  readonly onChange: (value: number) => void;
}

/** A whole number from 1 on; anything else that is typed leaves the last one standing. */
function NumberChoice({ label, value, most, onChange }: NumberChoiceProps) {
  const [text, setText] = useState(String(value));
  const read = Number(text);
  const isGood = text.trim() !== '' && Number.isInteger(read) && read >= 1 && read <= most;
  return (
    <Field label={label} fault={isGood ? undefined : phrase`A whole number from 1 to ${most}.`}>
      {(wiring) => (
        <input
          {...wiring}
          type="number"
          min={1}
          max={most}
          value={text}
          onChange={({ target }) => {
            setText(target.value);
            const typed = Number(target.value);
            if (target.value.trim() !== '' && Number.isInteger(typed) && typed >= 1 && typed <= most) onChange(typed);
          }}
        />
      )}
    </Field>
  );
}

/** What a panel of some size could see in this trial. */
function BeforeTastingOf({ levels, people }: { readonly levels: number; readonly people: number }) {
  const [samples, setSamples] = useState(Math.min(24, Math.max(1, levels)));
  const [tasters, setTasters] = useState(Math.min(500, Math.max(1, people)));
  const [replicates, setReplicates] = useState(1);
  return (
    <>
      <div className="field-grid wish-numbers">
        <NumberChoice label={words.samples} value={samples} most={24} onChange={setSamples} />
        <NumberChoice label={words.tasters} value={tasters} most={500} onChange={setTasters} />
        <NumberChoice label={words.replicates} value={replicates} most={10} onChange={setReplicates} />
      </div>
      <PanelSight samples={samples} tasters={tasters} replicates={replicates} />
    </>
  );
}

export function BeforeTasting({ levels }: { readonly levels: number }) {
  const { data } = useAnswer('tasters:list', {});
  return data === undefined ? null : <BeforeTastingOf levels={levels} people={data.tasters.length} />;
}
