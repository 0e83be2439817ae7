import type { Factor } from '#core/trial/factor.ts';
import { ingredientName } from '#core/trial/formula.ts';
import type { LevelInput } from '#core/trial/plan-input.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { daysWords } from '#renderer/format/words.ts';
import type { LevelDraft, PlanDraft } from './plan-draft.ts';
import { readAdditions } from './read-addition.ts';
import { readAmount } from './read-amount.ts';
import { readDays, readTemperature, type Typed } from './read-quantity.ts';
import { fault, gap, type Said } from './said.ts';
import { coverNames, words } from './words.ts';

export interface ReadLevel {
  readonly level: LevelInput;
  readonly said: readonly Said[];
}

type Members = Omit<LevelInput, 'name'>;
interface Read {
  readonly members: Members;
  readonly name: string;
  readonly said: readonly Said[];
}

function counted(typed: Typed, at: string, missing: string, name: (value: number) => string): Read {
  if (typed.kind === 'fault') return { members: {}, name: '', said: [fault(at, typed.message)] };
  if (typed.kind === 'none') return { members: {}, name: '', said: [gap(at, missing)] };
  return { members: { value: typed.value }, name: name(typed.value), said: [] };
}

function amountRead(level: LevelDraft, at: string, ingredient: string, measures: Measures): Read {
  const amount = readAmount(level.value, ingredient, { mayBeZero: true, measured: measures.measured });
  if (amount.kind === 'none') return { members: {}, name: '', said: [gap(at, words.says.levelAmountMissing)] };
  if (amount.kind === 'fault') return { members: {}, name: '', said: [fault(at, amount.message)] };
  if (amount.kind === 'unweighed') {
    return { members: {}, name: '', said: [fault(at, amount.why === '' ? words.says.levelNeedsGrams : amount.why)] };
  }
  const { mass_g } = amount;
  const name = mass_g === 0 ? words.plainBase : amount.fromMeasure ? level.value.trim() : measures.mass(mass_g);
  return { members: { value: mass_g }, name, said: [] };
}

function additionsRead(level: LevelDraft, at: string, isNeeded: boolean, measures: Measures): Read {
  const { measured } = measures;
  const { additions, said, isWhole } = readAdditions(level.additions, `${at}.additions`, { measured });
  if (additions.length === 0 && isWhole && isNeeded) {
    return { members: {}, name: '', said: [gap(`${at}.additions.0.ingredient`, words.says.ingredientMissing)] };
  }
  const names = additions.map(({ ingredient }) => ingredientName(ingredient)).join(' + ');
  return { members: isWhole ? { additions } : {}, name: names || (isNeeded ? '' : words.plainBase), said };
}

function formulaRead(level: LevelDraft, at: string, plan: PlanDraft, measures: Measures): Read {
  const { members, name, said } = additionsRead(level, at, false, measures);
  const days = readDays(level.days);
  const warmth = readTemperature(level.temperature, plan.measures);
  return {
    name,
    members: {
      ...members,
      ...(days.kind === 'number' ? { days: days.value } : {}),
      ...(warmth.kind === 'number' ? { temperature_C: warmth.value } : {}),
      ...(level.cover === '' ? {} : { cover: level.cover }),
    },
    said: [
      ...said,
      ...(days.kind === 'fault' ? [fault(`${at}.days`, days.message)] : []),
      ...(warmth.kind === 'fault' ? [fault(`${at}.temperature_C`, warmth.message)] : []),
    ],
  };
}

function readMoved(factor: Factor, level: LevelDraft, at: string, plan: PlanDraft, measures: Measures): Read {
  switch (factor) {
    case 'days':
      return counted(readDays(level.value), `${at}.value`, words.says.daysMissing, daysWords);
    case 'temperature':
      return counted(
        readTemperature(level.value, plan.measures),
        `${at}.value`,
        words.says.temperatureMissing,
        measures.temperature,
      );
    case 'amount':
      return amountRead(level, `${at}.value`, plan.held.additions[0]?.ingredient ?? '', measures);
    case 'fruit':
      return additionsRead(level, at, true, measures);
    case 'formula':
      return formulaRead(level, at, plan, measures);
    case 'state':
      return level.state === ''
        ? { members: {}, name: '', said: [gap(`${at}.state`, words.says.stateMissing)] }
        : { members: { state: level.state }, name: level.state, said: [] };
    case 'cover':
      return level.cover === ''
        ? { members: {}, name: '', said: [gap(`${at}.cover`, words.says.coverMissing)] }
        : { members: { cover: level.cover }, name: coverNames[level.cover], said: [] };
  }
}

/**
 * One level as typed, read for the factor that moves. What was typed for another factor stays in the draft and is passed over.
 *
 * A level without a name of its own is called after what it brings: "2 days", "75 g", "pears + ginger".
 */
export function readLevel(plan: PlanDraft, position: number, measures: Measures): ReadLevel {
  const level = plan.levels[position];
  if (level === undefined) return { level: { name: '' }, said: [] };
  const at = `levels.${position}`;
  const { members, name, said } = readMoved(plan.factor, level, at, plan, measures);
  const own = level.name.trim();
  const tooLong = own.length > 200 ? [fault(`${at}.name`, words.says.tooLong)] : [];
  const spare = words.jarName(String.fromCharCode(65 + position));
  return { level: { name: own || name.slice(0, 200) || spare, ...members }, said: [...said, ...tooLong] };
}
