import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Jar = ValueOf<'trials:open'>['jarsWhole'][number];

/** Jars that can be tasted: started, and not thrown away. */
export function canBeTasted({ state }: Pick<Jar, 'state'>): boolean {
  return state !== 'planned' && state !== 'discarded';
}

interface JarChoiceProps {
  readonly jars: readonly Jar[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[]) => void;
}

/** Which jars are tasted. Those that can't be stand there too, with the reason. */
export function JarChoice({ jars, chosen, onChange }: JarChoiceProps) {
  return (
    <div className="field-grid is-tight">
      {jars.map((jar) => (
        <label key={jar.id} className="check">
          <input
            type="checkbox"
            checked={chosen.includes(jar.id)}
            disabled={!canBeTasted(jar)}
            onChange={({ target }) =>
              onChange(jars.flatMap(({ id }) => ((id === jar.id ? target.checked : chosen.includes(id)) ? [id] : [])))
            }
          />
          <span>
            <strong>{jar.label}</strong> {jar.levelName}
            {jar.isControl ? <span className="soft"> {words.control}</span> : null}
            {jar.state === 'planned' ? <span className="soft"> ({words.notStarted})</span> : null}
            {jar.state === 'discarded' ? <span className="soft"> ({words.discarded})</span> : null}
          </span>
        </label>
      ))}
    </div>
  );
}
