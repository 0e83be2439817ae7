import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Formula, FormulaAddition } from './formula.ts';

/** One thing that differs between two versions, for programs and for people. */
export interface VersionDifference {
  readonly kind: 'added' | 'removed' | 'changed';
  /** What it is about: 'base', 'days', 'addition', 'addition.amount' … */
  readonly field: string;
  readonly ingredient?: string;
  readonly before: string | number | null;
  readonly after: string | number | null;
  readonly sentence: string;
}

/**
 * What changed from one version of a formula to the next, one entry a change, in the order a recipe is read.
 *
 * Method: additions are matched by ingredient and state in order, so the same fruit may stand in twice; a changed state is a change, not
 * a removal and an addition. Equal versions give an empty list.
 *
 * @example differenceOfVersions(v1, v2)[0].sentence // 'raspberries: 80 g/L became 100 g/L (+25 %).'
 */
export function differenceOfVersions(before: Formula, after: Formula): VersionDifference[] {
  return [
    ...changed('base', phrase`The base`, before.base.name, after.base.name, ''),
    ...changed('base.sugar', phrase`Sugar of the base`, before.base.sugar_g_per_L, after.base.sugar_g_per_L, ' g/L'),
    ...changed(
      'base.alcohol',
      phrase`Alcohol of the base`,
      before.base.alcohol_pctVol,
      after.base.alcohol_pctVol,
      ' % vol',
    ),
    ...additionsChanged(before.additions, after.additions),
    ...changed('days', phrase`Days`, before.days, after.days, ''),
    ...changed('temperature', phrase`Temperature`, before.temperature_C, after.temperature_C, ' °C'),
    ...changed('cover', phrase`Cover`, before.cover, after.cover, ''),
    ...changed('note', phrase`The note`, before.note, after.note, ''),
  ];
}

type Shown = string | number | undefined;

function changed(
  field: string,
  what: string,
  before: Shown,
  after: Shown,
  unit: string,
  ingredient?: string,
): VersionDifference[] {
  if (isSame(before, after)) return [];
  const kind = before === undefined ? 'added' : after === undefined ? 'removed' : 'changed';
  return [
    {
      kind,
      field,
      ...(ingredient === undefined ? {} : { ingredient }),
      before: before ?? null,
      after: after ?? null,
      sentence: phrase`${what}: ${shown(before, unit)} became ${shown(after, unit)}${unit === ' g/L' ? percent(before, after) : ''}.`,
    },
  ];
}

/** Numbers that are written alike are alike: 75 g in 800 mL is 93.75 g/L however it was reckoned. */
function isSame(before: Shown, after: Shown): boolean {
  if (typeof before !== 'number' || typeof after !== 'number') return before === after;
  return before.toPrecision(6) === after.toPrecision(6);
}

function shown(value: Shown, unit: string): string {
  if (value === undefined) return phrase`not given`;
  return typeof value === 'number' ? `${shownNumber(Number(value.toPrecision(6)))}${unit}` : `“${value}”`;
}

function percent(before: Shown, after: Shown): string {
  if (typeof before !== 'number' || typeof after !== 'number' || before <= 0) return '';
  const share = Math.round((100 * (after - before)) / before);
  return ` (${share < 0 ? '−' : '+'}${shownNumber(Math.abs(share))} %)`;
}

function additionsChanged(before: readonly FormulaAddition[], after: readonly FormulaAddition[]): VersionDifference[] {
  const left = [...before];
  const pairs = after.map((now) => ({
    now,
    was: take(left, (one) => one.ingredient === now.ingredient && one.state === now.state),
  }));
  const differences: VersionDifference[] = [];
  for (const { now, was } of pairs) {
    const then = was ?? take(left, (one) => one.ingredient === now.ingredient);
    if (!then) {
      differences.push(whole('added', now));
      continue;
    }
    const name = now.ingredient;
    differences.push(
      ...amountChanged(name, then, now),
      ...changed('addition.state', `${name}, state`, then.state, now.state, '', name),
      ...changed('addition.form', `${name}, form`, then.form, now.form, '', name),
    );
  }
  return [...differences, ...left.map((gone) => whole('removed', gone))];
}

function amountChanged(name: string, then: FormulaAddition, now: FormulaAddition): VersionDifference[] {
  return changed('addition.amount', name, then.amount_g_per_L, now.amount_g_per_L, ' g/L', name);
}

function take(from: FormulaAddition[], fits: (one: FormulaAddition) => boolean): FormulaAddition | undefined {
  const place = from.findIndex(fits);
  return place < 0 ? undefined : from.splice(place, 1)[0];
}

function whole(kind: 'added' | 'removed', one: FormulaAddition): VersionDifference {
  const amount = Number(one.amount_g_per_L.toPrecision(6));
  return {
    kind,
    field: 'addition',
    ingredient: one.ingredient,
    before: kind === 'removed' ? amount : null,
    after: kind === 'added' ? amount : null,
    sentence:
      kind === 'added'
        ? phrase`${one.ingredient} (${one.state}), ${amount} g/L: new in this version.`
        : phrase`${one.ingredient} (${one.state}), ${amount} g/L: left out in this version.`,
  };
}
