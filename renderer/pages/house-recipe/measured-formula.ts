import { knownSugars } from '#core/ferment/known-sugars.ts';
import { type KitchenTool, roundFormula } from '#core/recipe/round-formula.ts';
import { type Addition, ingredientName } from '#core/trial/formula.ts';
import { fixed, shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { joined, stateWords } from '#renderer/format/words.ts';
import { knownAddition, type PantryRow } from './known-additions.ts';
import { words } from './words.ts';

export type ToolName = keyof typeof words.tools;

const tools: Readonly<Record<Exclude<ToolName, 'exact'>, KitchenTool>> = {
  tenth: { scaleStep_g: 0.1 },
  one: { scaleStep_g: 1 },
  five: { scaleStep_g: 5 },
  spoons: { spoons: true },
};

/** One line to weigh in, and what rounding did to it where that is worth saying. */
export interface MeasuredLine {
  readonly key: string;
  readonly words: string;
  readonly remark: string | null;
}

export interface MeasuredFormula {
  readonly lines: readonly MeasuredLine[];
  /** What rounding does to the sugar, from half a gram per litre on, or that nobody knows it. */
  readonly sugarRemark: string | null;
}

function signed(value: number, decimals: number): string {
  return `${value < 0 ? '−' : '+'}${fixed(Math.abs(value), decimals)}`;
}

function named({ ingredient, state, asWritten, leftIn }: Addition): string {
  const name = ingredientName(ingredient);
  const shown = name.includes(state) || state === 'liquid' ? name : `${name}, ${stateWords[state]}`;
  const written = asWritten === undefined ? '' : ` (${asWritten})`;
  return `${shown}${written}${leftIn === false ? phrase`, strained out before the end` : ''}`;
}

/** Quarters as cooks write them. @example spoonCount(1.25) // '1 1/4' */
export function spoonCount(count: number): string {
  const whole = Math.floor(count);
  const part = { 0.25: '1/4', 0.5: '1/2', 0.75: '3/4' }[count - whole] ?? '';
  return whole === 0 && part !== '' ? part : [String(whole), part].filter(Boolean).join(' ');
}

/** What to weigh in for a scaled version, to what the kitchen can measure; an amount that rounding moves by half a per cent says so. */
export function measuredFormula(
  base_mL: number,
  additions: readonly Addition[],
  tool: ToolName,
  measures: Measures,
  pantry: readonly PantryRow[] = [],
): MeasuredFormula {
  const known = additions.map((one) => knownAddition(one, pantry));
  const exact = additions.map((one, place) => {
    const composition = known[place]?.composition ?? null;
    const own = known[place]?.measures;
    return {
      ingredient: ingredientName(one.ingredient),
      mass_g: one.mass_g,
      state: one.state,
      ...(composition === null ? {} : { composition }),
      ...(own === undefined ? {} : { measures: own }),
    };
  });
  const rounded = tool === 'exact' ? null : roundFormula({ base_mL, additions: exact, contents_mL: null }, tools[tool]);
  const lines = additions.map((addition, place) => {
    const as = rounded?.additions[place];
    const amount =
      as === undefined
        ? `${shownNumber(Number(addition.mass_g.toPrecision(6)))} g`
        : as.spoons === null
          ? measures.system === 'metric' && as.rounded_g < 1000
            ? `${shownNumber(Number(as.rounded_g.toFixed(1)))} g`
            : measures.mass(as.rounded_g)
          : `${spoonCount(as.spoons.count)} ${as.spoons.unit}${as.spoons.form === null ? '' : ` ${as.spoons.form}`}`;
    const isMoved = as !== undefined && Math.abs(as.change_pct) >= 0.5;
    return {
      key: `${place}`,
      words: `${amount} ${named(addition)}`,
      remark: isMoved ? words.rounded(`${fixed(addition.mass_g, 1)} g`, `${signed(as.change_pct, 1)} %`) : null,
    };
  });
  if (rounded === null) return { lines, sugarRemark: null };
  const sugar = rounded.sugarChange_g_per_L;
  if (sugar === null) {
    const moved = rounded.additions.filter(({ exact_g, rounded_g }) => exact_g !== rounded_g);
    const names = moved.map(({ ingredient }) => ingredient).filter((name) => isSugarUnknown(name, additions, pantry));
    return { lines, sugarRemark: words.sugarMoveUnknown(joined([...new Set(names)])) };
  }
  return {
    lines,
    sugarRemark: Math.abs(sugar) >= 0.5 ? words.sugarMoved(phrase`${signed(sugar, 1)} g per litre`) : null,
  };
}

function isSugarUnknown(name: string, additions: readonly Addition[], pantry: readonly PantryRow[]): boolean {
  const addition = additions.find(({ ingredient }) => ingredientName(ingredient) === name);
  if (addition === undefined) return false;
  const { composition } = knownAddition(addition, pantry);
  return composition === null || knownSugars(composition) === null;
}
