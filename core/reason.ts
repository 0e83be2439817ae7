/** Why something could not be computed. A closed list: every sentence the program says about it starts here. */
export const reasonCodes = [
  'one-taster',
  'one-sample',
  'too-few-scores',
  'no-variation',
  'sample-untasted',
  'no-control',
  'no-levels',
  'level-missing',
  'two-levels-only',
  'no-repeats',
  'no-turning-point',
  'rising-at-end',
  'falling-from-start',
  'taster-variance-zero',
  'interaction-variance-zero',
  'off-scale',
  'perfect-score',
  'below-chance',
  'composition-unknown',
  'base-sugar-unknown',
  'vessel-unrated',
  'incomplete-panel',
  'scale-turned-round',
  'too-many-samples',
  'not-in-this-version',
  'jar-overfull',
  'vessel-open',
  'too-few-readings',
  'no-decline',
  'target-not-reached',
] as const;

export type ReasonCode = (typeof reasonCodes)[number];

/**
 * One thing that could not be computed.
 *
 * `path` points to the place in the answer that is `null` or that the remark is about; `needs` says in plain words what would help.
 */
export interface Reason {
  readonly path: readonly (string | number)[];
  readonly code: ReasonCode;
  readonly needs: string;
}
