import { phrase } from '#core/words/phrase.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useExplainedLabel } from '#renderer/parts/term/explained-label.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import type { SetUp } from './set-up.ts';
import { type Way, wayWords, words } from './words.ts';

type Jar = ValueOf<'trials:open'>['jarsWhole'][number];
type Taster = ValueOf<'tasters:list'>['tasters'][number];

interface ChoiceProps {
  readonly setUp: SetUp;
  readonly jars: readonly Jar[];
  readonly failure: Failure | null;
  readonly onChange: (part: Partial<SetUp>) => void;
}

const ways: readonly Way[] = ['triangle', 'duo-trio', 'paired'];

function WayLabel({
  way,
  isChosen,
  onChoose,
}: {
  readonly way: Way;
  readonly isChosen: boolean;
  readonly onChoose: () => void;
}) {
  const { title, task, when } = wayWords[way];
  const label = useExplainedLabel<HTMLLabelElement>(title, when);
  return (
    <label {...label.mark} className="apart-way">
      <input
        type="radio"
        name="way"
        value={way}
        checked={isChosen}
        aria-describedby={label.describedBy}
        onChange={onChoose}
      />
      <span>
        <strong>{label.words}</strong>
        <span>{task}</span>
        <span className="small soft">{label.line}</span>
      </span>
    </label>
  );
}

export function WayChoice({ way, onChange }: { readonly way: Way; readonly onChange: (way: Way) => void }) {
  return (
    <fieldset>
      <legend className="field-legend">
        <Explained words={words.way} />
      </legend>
      <div className="apart-ways">
        {ways.map((each) => (
          <WayLabel key={each} way={each} isChosen={way === each} onChoose={() => onChange(each)} />
        ))}
      </div>
    </fieldset>
  );
}

export function JarChoice({ setUp, jars, failure, onChange }: ChoiceProps) {
  return (
    <fieldset>
      <legend className="field-legend">
        <Explained words={words.jars} />
      </legend>
      <div className="field-grid">
        {(['jarA', 'jarB'] as const).map((which) => (
          <Field key={which} label={which === 'jarA' ? words.first : words.second} fault={faultAt(failure, which)}>
            {(wiring) => (
              <select {...wiring} value={setUp[which]} onChange={({ target }) => onChange({ [which]: target.value })}>
                {jars.map((jar) => (
                  <option key={jar.id} value={jar.id}>
                    {`${jar.label}: ${jar.levelName}${jar.isControl ? phrase` (control)` : ''}`}
                  </option>
                ))}
              </select>
            )}
          </Field>
        ))}
      </div>
    </fieldset>
  );
}

/** For a pair: what is asked of the cups, and which jar should win if the maker is right. */
export function ExpectationChoice({ setUp, jars, failure, onChange }: ChoiceProps) {
  const label = (id: string) => jars.find((jar) => jar.id === id)?.label ?? '';
  const choices: readonly (readonly ['A' | 'B' | null, string])[] = [
    [null, words.noExpectation],
    ['A', words.expects(label(setUp.jarA))],
    ['B', words.expects(label(setUp.jarB))],
  ];
  return (
    <div className="field-grid">
      <Field label={words.asked} hint={words.askedHint} fault={faultAt(failure, 'asked')}>
        {(wiring) => (
          <input {...wiring} value={setUp.asked} onChange={({ target }) => onChange({ asked: target.value })} />
        )}
      </Field>
      <fieldset>
        <legend className="field-legend">
          <Explained words={words.expectation} />
        </legend>
        <div className="apart-expectations">
          {choices.map(([expected, name]) => (
            <label key={name} className="check">
              <input
                type="radio"
                name="expected"
                checked={setUp.expected === expected}
                onChange={() => onChange({ expected })}
              />
              {name}
            </label>
          ))}
        </div>
        <p className="small soft">{words.expectationHint}</p>
      </fieldset>
    </div>
  );
}

interface TasterChoiceProps {
  readonly all: readonly Taster[];
  readonly chosen: readonly string[];
  readonly fault: string | undefined;
  readonly onChange: (chosen: string[]) => void;
}

export function TasterChoice({ all, chosen, fault, onChange }: TasterChoiceProps) {
  return (
    <fieldset>
      <legend className="field-legend">
        <Explained words={words.tasters} />
      </legend>
      <div className="field-grid is-tight">
        {all.map(({ id, name }) => (
          <label key={id} className="check">
            <input
              type="checkbox"
              checked={chosen.includes(id)}
              onChange={({ target }) =>
                onChange(target.checked ? [...chosen, id] : chosen.filter((each) => each !== id))
              }
            />
            {name}
          </label>
        ))}
      </div>
      {chosen.length === all.length ? null : (
        <Button weight="quiet" onClick={() => onChange(all.map(({ id }) => id))}>
          {words.allTasters}
        </Button>
      )}
      {fault === undefined ? null : (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
    </fieldset>
  );
}
