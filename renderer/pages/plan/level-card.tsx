import { type Factor, isOrdered } from '#core/trial/factor.ts';
import type { AdditionState, Cover } from '#core/trial/formula.ts';
import { phrase } from '#core/words/phrase.ts';
import { stateWords } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Tape } from '#renderer/parts/tape/tape.tsx';
import { useExplainedLabel } from '#renderer/parts/term/explained-label.tsx';
import { AdditionRows } from './addition-rows.tsx';
import { changeLevel, removeLevel } from './change-plan.ts';
import { usePlan } from './plan-context.ts';
import type { LevelDraft } from './plan-draft.ts';
import { PlanChoice, PlanGroup, PlanSentence, PlanText, sentenceId } from './plan-field.tsx';
import { coverNames, valueWords, words } from './words.ts';

const states: readonly (readonly [AdditionState | '', string])[] = [
  ['', '…'],
  ['fresh', stateWords.fresh],
  ['frozen', stateWords.frozen],
  ['liquid', phrase`as juice`],
];
export const coverOptions: readonly (readonly [Cover | '', string])[] = [
  ['', words.unsaid],
  ['cloth', coverNames.cloth],
  ['airlock', coverNames.airlock],
  ['lid', coverNames.lid],
];

/** The member of a level that its one field writes, where it is no number. */
const movedMember: Partial<Record<Factor, string>> = { state: 'state', cover: 'cover' };

interface LevelProps {
  readonly level: LevelDraft;
  readonly position: number;
}

function Moved({ level, position }: LevelProps) {
  const { draft, change } = usePlan();
  const at = `levels.${position}`;
  const set = (values: Partial<LevelDraft>) => change(changeLevel(position, values));
  const { factor } = draft;
  if (factor === 'days' || factor === 'amount' || factor === 'temperature') {
    const { label, example } = valueWords[factor];
    const unit = factor === 'temperature' ? ` ${words.temperatureHint[draft.measures].toLowerCase()}` : '';
    return (
      <PlanText
        at={`${at}.value`}
        saysBelow
        label={`${label}${unit}`}
        placeholder={example}
        value={level.value}
        onType={(value) => set({ value })}
      />
    );
  }
  if (factor === 'state') {
    return (
      <PlanChoice
        at={`${at}.state`}
        saysBelow
        label={words.state}
        value={level.state}
        options={states}
        onChoose={(state) => set({ state })}
      />
    );
  }
  if (factor === 'cover') {
    return (
      <PlanChoice
        at={`${at}.cover`}
        saysBelow
        label={words.cover}
        value={level.cover}
        options={coverOptions}
        onChoose={(cover) => set({ cover })}
      />
    );
  }
  return null;
}

function OwnFormula({ level, position }: LevelProps) {
  const { draft, change } = usePlan();
  const at = `levels.${position}`;
  const set = (values: Partial<LevelDraft>) => change(changeLevel(position, values));
  return (
    <>
      <PlanGroup at={`${at}.additions`} legend={words.inThisJar}>
        <AdditionRows at={`${at}.additions`} rows={level.additions} onChange={(additions) => set({ additions })} />
      </PlanGroup>
      {draft.factor === 'formula' ? (
        <div className="field-grid">
          <PlanText
            at={`${at}.days`}
            label={words.days}
            hint={words.daysHint}
            value={level.days}
            onType={(days) => set({ days })}
          />
          <PlanChoice
            at={`${at}.cover`}
            label={words.cover}
            value={level.cover}
            options={coverOptions}
            onChoose={(cover) => set({ cover })}
          />
          <PlanText
            at={`${at}.temperature_C`}
            label={words.temperature}
            hint={words.temperatureHint[draft.measures]}
            value={level.temperature}
            onType={(temperature) => set({ temperature })}
          />
        </div>
      ) : null}
    </>
  );
}

function ControlChoice({ level, said }: Pick<LevelProps, 'level'> & { readonly said: string }) {
  const { draft, change, sentenceAt } = usePlan();
  const label = useExplainedLabel<HTMLLabelElement>(words.controlShort);
  const fault = sentenceAt('control') === undefined ? '' : sentenceId('control');
  return (
    <label {...label.mark} className="check plan-control">
      <input
        type="radio"
        name="plan-control"
        checked={draft.control === level.key}
        aria-describedby={[fault, label.describedBy ?? ''].join(' ').trim() || undefined}
        onChange={() => change((plan) => ({ ...plan, control: level.key }))}
      />
      <span>
        {label.words}
        <span className="unseen"> {said}</span>
      </span>
    </label>
  );
}

/** One jar of the plan: what moves in it, its name, and whether it is the control. */
export function LevelCard({ level, position }: LevelProps) {
  const { draft, judged, change } = usePlan();
  const letter = String.fromCharCode(65 + position);
  const at = `levels.${position}`;
  const own = draft.factor === 'fruit' || draft.factor === 'formula';
  const said = judged.plan.levels[position]?.name ?? '';
  return (
    <li>
      <PlanGroup
        at={at}
        className="plan-level"
        legend={
          <Tape>
            <span className="unseen">{phrase`Jar`} </span>
            {letter}
          </Tape>
        }
      >
        {own ? <OwnFormula level={level} position={position} /> : null}
        <div className={isOrdered(draft.factor) || !own ? 'plan-level-row' : 'plan-level-row is-own'}>
          <Moved level={level} position={position} />
          <PlanText
            at={`${at}.name`}
            saysBelow
            label={words.name}
            placeholder={said}
            value={level.name}
            onType={(name) => change(changeLevel(position, { name }))}
          />
          <ControlChoice level={level} said={said} />
          {draft.levels.length > 1 ? (
            <Button
              weight="quiet"
              className="plan-take-out"
              aria-label={words.removeJar(letter)}
              onClick={() => change(removeLevel(position))}
            >
              ×
            </Button>
          ) : null}
        </div>
        {own ? null : <PlanSentence at={`${at}.${movedMember[draft.factor] ?? 'value'}`} />}
        <PlanSentence at={`${at}.name`} />
      </PlanGroup>
    </li>
  );
}
