import { useState } from 'react';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import { capital } from '#renderer/format/words.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import type { WishKeeper } from './use-wishes.ts';
import { type Goal, type Wish, type WishPlace, wishFor } from './wish.ts';
import { WishSlope } from './wish-slope.tsx';
import { endWords, words } from './words.ts';

type End = 'low' | 'target' | 'high';
type Typed = Partial<Record<End, string>>;

interface Fault {
  readonly end: End | null;
  readonly words: string;
}

/** The wish with what was typed put in; null at the first field that holds no number. */
function readTyped(wish: Wish, typed: Typed): Wish | End {
  const read: Partial<Record<End, number>> = {};
  for (const end of ['low', 'target', 'high'] as const) {
    const text = typed[end];
    if (text === undefined) continue;
    const number = typedNumber(text);
    if (number.kind !== 'number') return end;
    read[end] = number.value;
  }
  return { ...wish, ...read };
}

/** What was typed since: a field that was written on while its older text was being kept stays as it is. */
function withoutSent(typed: Typed, sent: Typed): Typed {
  return Object.fromEntries(Object.entries(typed).filter(([end, text]) => sent[end as End] !== text));
}

/** One attribute: what is wanted, between which ends, and how much it counts. Kept when a field is left. */
export function WishRow({ place, keeper }: { readonly place: WishPlace; readonly keeper: WishKeeper }) {
  const { attribute, wish } = place;
  const [typed, setTyped] = useState<Typed>({});
  const [fault, setFault] = useState<Fault | null>(null);

  function keep(change: (now: Wish | null) => Wish | null, sent: Typed = {}): void {
    setFault(null);
    keeper.keep(attribute.name, change, {
      onKept: () => setTyped((all) => withoutSent(all, sent)),
      onRefused({ message, path }) {
        const end = path?.[2];
        const isEnd = end === 'low' || end === 'target' || end === 'high';
        // The sentence names the list's member; beside its field the reason is enough.
        setFault({ end: isEnd ? end : null, words: capital(message.slice(message.indexOf(': ') + 1).trim()) });
      },
    });
  }

  function keepTyped(): void {
    if (wish === null || Object.keys(typed).length === 0) return;
    const wanted = readTyped(wish, typed);
    if (typeof wanted === 'string') setFault({ end: wanted, words: words.notANumber });
    else {
      const { low, target, high } = wanted;
      keep((now) => (now === null ? wanted : { ...now, low, target, high }), typed);
    }
  }

  const name = capital(attribute.name);
  const known = words.counts.some(([times]) => times === wish?.importance);
  const shown = wish === null ? null : readTyped(wish, typed);
  const drawn = shown === null || typeof shown === 'string' ? wish : shown;
  const ends: readonly End[] = wish?.goal === 'target' ? ['low', 'target', 'high'] : ['low', 'high'];
  return (
    <fieldset className="wish">
      <legend>
        {name} <span className="wish-scale soft small">{phrase`${attribute.low} to ${attribute.high}`}</span>
      </legend>
      <select
        aria-label={words.goal(name)}
        value={wish?.goal ?? 'none'}
        onChange={({ target }) => {
          setTyped({});
          const goal = target.value;
          keep((now) => (goal === 'none' ? null : wishFor(attribute, goal as Goal, now)));
        }}
      >
        {Object.entries(words.goals).map(([goal, said]) => (
          <option key={goal} value={goal}>
            {said}
          </option>
        ))}
      </select>
      {wish === null ? null : (
        <>
          <div className="wish-ends">
            {ends.map((end) => (
              <Field
                key={end}
                label={endWords[wish.goal][end]}
                fault={fault !== null && (fault.end ?? 'high') === end ? fault.words : undefined}
              >
                {(wiring) => (
                  <input
                    {...wiring}
                    inputMode="decimal"
                    value={typed[end] ?? (wish[end] === undefined || wish[end] === null ? '' : shownNumber(wish[end]))}
                    onChange={({ target }) => setTyped((all) => ({ ...all, [end]: target.value }))}
                    onBlur={keepTyped}
                    onKeyDown={({ key }) => {
                      if (key === 'Enter') keepTyped();
                    }}
                  />
                )}
              </Field>
            ))}
          </div>
          <select
            className="wish-counts"
            aria-label={words.importance(name)}
            value={wish.importance}
            onChange={({ target }) => {
              const importance = Number(target.value);
              keep((now) => ({ ...(now ?? wish), importance }));
            }}
          >
            {known ? null : <option value={wish.importance}>{words.countsOther(wish.importance)}</option>}
            {words.counts.map(([times, said]) => (
              <option key={times} value={times}>
                {said}
              </option>
            ))}
          </select>
          {drawn === null ? null : <WishSlope wish={drawn} attribute={attribute} />}
        </>
      )}
    </fieldset>
  );
}
