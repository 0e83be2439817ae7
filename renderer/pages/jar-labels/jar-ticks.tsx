import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Jar = ValueOf<'trials:open'>['jarsWhole'][number];

interface JarTicksProps {
  readonly jars: readonly Jar[];
  /** Those that get no label. */
  readonly left: ReadonlySet<string>;
  readonly onChange: (left: ReadonlySet<string>) => void;
}

/** Which jars get a label: all, until some are left out. */
export function JarTicks({ jars, left, onChange }: JarTicksProps) {
  const isNone = jars.every(({ id }) => left.has(id));
  function turn(id: string, isWanted: boolean) {
    onChange(new Set(isWanted ? [...left].filter((other) => other !== id) : [...left, id]));
  }
  return (
    <fieldset
      className="field"
      aria-describedby={isNone ? 'no-jars' : undefined}
      aria-invalid={isNone ? true : undefined}
    >
      <legend className="field-legend">
        <Explained words={words.which} />
      </legend>
      <div className="field-grid is-tight">
        {jars.map(({ id, label, levelName }) => (
          <label key={id} className="check">
            <input type="checkbox" checked={!left.has(id)} onChange={({ target }) => turn(id, target.checked)} />
            {words.jar(label, levelName)}
          </label>
        ))}
      </div>
      {jars.length < 2 ? null : (
        <div className="button-row">
          <Button weight="quiet" onClick={() => onChange(new Set())}>
            {words.all}
          </Button>
          <Button weight="quiet" onClick={() => onChange(new Set(jars.map(({ id }) => id)))}>
            {words.none}
          </Button>
        </div>
      )}
      {isNone ? (
        <p id="no-jars" className="field-fault" role="alert">
          {jars.length === 0 ? words.noneAtAll : words.noJars}
        </p>
      ) : null}
    </fieldset>
  );
}
