import { type Lowest, simplexSearch } from './simplex-search.ts';

/** One reading of how much sugar is left, in g/L or °Bx: all of a list in the same. */
export interface SugarReading {
  readonly hours: number;
  readonly sugar: number;
}

export type DeclineModelName = 'first-order' | 'logistic';

/** A shape that the fall of sugar may have: 1 at some point, then falling towards 0, scaled by one height. */
export interface DeclineModel {
  readonly name: DeclineModelName;
  /** Parameters of the mean, the height included. */
  readonly parameters: number;
  /** The unscaled curve at an hour; `shape` holds the remaining parameters, rates as logarithms. */
  readonly curve: (hours: number, shape: readonly number[]) => number;
  /** Where to start looking, for readings that span so many hours from `first`. */
  readonly starts: (first: number, span: number) => readonly (readonly number[])[];
  readonly steps: (span: number) => readonly number[];
}

/** exp(−k t): the share that goes each hour stays the same. Shape: ln k. */
export const firstOrder: DeclineModel = {
  name: 'first-order',
  parameters: 2,
  curve: (hours, [logRate = 0]) => Math.exp(-Math.exp(logRate) * hours),
  starts: (_first, span) => [0.1, 1, 5].map((falls) => [Math.log(falls / span)]),
  steps: () => [0.7],
};

/** 1/(1 + exp(r (t − m))): slow at first, fastest at the middle m, slow at the end. Shape: ln r, m. */
export const logistic: DeclineModel = {
  name: 'logistic',
  parameters: 3,
  curve: (hours, [logRate = 0, middle = 0]) => 1 / (1 + Math.exp(Math.exp(logRate) * (hours - middle))),
  starts: (first, span) =>
    [2, 8].flatMap((steepness) => [0.25, 0.6, 1].map((share) => [Math.log(steepness / span), first + share * span])),
  steps: (span) => [0.5, 0.2 * span],
};

/** A model brought as near to the readings as it goes. */
export interface FittedModel {
  readonly model: DeclineModel;
  readonly height: number;
  readonly shape: readonly number[];
  readonly squares: number;
}

/** A point that the curve must pass, and a shape near the best one to start from. */
export interface Passing {
  readonly point: SugarReading;
  readonly near: readonly number[];
}

/** The least squares fit of a model: with the height that fits best, or with the one that makes the curve pass a given point. */
export function fitModel(model: DeclineModel, readings: readonly SugarReading[], passing?: Passing): FittedModel {
  const first = Math.min(...readings.map((one) => one.hours));
  const span = Math.max(...readings.map((one) => one.hours)) - first;
  const heightOf = (shape: readonly number[]) =>
    passing ? passing.point.sugar / model.curve(passing.point.hours, shape) : bestHeight(model, readings, shape);
  const squaresOf = (shape: readonly number[]) => {
    const height = heightOf(shape);
    let sum = 0;
    for (const { hours, sugar } of readings) sum += (sugar - height * model.curve(hours, shape)) ** 2;
    return Number.isFinite(sum) ? sum : Number.POSITIVE_INFINITY;
  };
  let best: Lowest = { point: [], height: Number.POSITIVE_INFINITY };
  for (const start of passing ? [passing.near] : model.starts(first, span)) {
    const found = simplexSearch(squaresOf, start, model.steps(span));
    if (found.height < best.height || best.point.length === 0) best = found;
  }
  return { model, height: heightOf(best.point), shape: best.point, squares: best.height };
}

function bestHeight(model: DeclineModel, readings: readonly SugarReading[], shape: readonly number[]): number {
  let above = 0;
  let below = 0;
  for (const { hours, sugar } of readings) {
    const curve = model.curve(hours, shape);
    above += sugar * curve;
    below += curve * curve;
  }
  return above / below;
}
