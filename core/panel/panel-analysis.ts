import type { Reason } from '#core/reason.ts';

/** One score of a tasting. */
export interface PanelScore {
  readonly taster: string;
  readonly sample: string;
  readonly attribute: string;
  readonly score: number;
  readonly replicate?: number | undefined;
  readonly jar?: string | undefined;
}

export interface PanelInput {
  readonly scores: readonly PanelScore[];
  readonly control?: string | undefined;
  /** Each sample's place on the factor: days, grams, degrees. */
  readonly levels?: Readonly<Record<string, number>> | undefined;
  /** Lower and upper end of each attribute's scale. */
  readonly scales?: Readonly<Record<string, readonly [number, number]>> | undefined;
  /** Which attribute is the liking; 'liking' unless given. */
  readonly liking?: string | undefined;
  readonly alpha?: number | undefined;
  readonly seed?: number | undefined;
}

export interface SampleMean {
  readonly sample: string;
  readonly n: number;
  readonly mean: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly letters: string | null;
}

export interface PairDifference {
  readonly a: string;
  readonly b: string;
  /** a − b. */
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
}

export interface ControlDifference {
  readonly sample: string;
  /** sample − control. */
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly p: number;
}

export interface SampleTest {
  readonly f: number;
  readonly dfSample: number;
  readonly dfError: number;
  readonly p: number;
}

export interface RankTest {
  readonly chiSquare: number;
  readonly df: number;
  readonly p: number;
  /** Whether p comes from every possible ranking, not from the chi-square limit. */
  readonly exact: boolean;
  readonly kendallW: number;
  readonly blocks: number;
}

export interface Trend {
  readonly slope: number;
  readonly slopeLow: number | null;
  readonly slopeHigh: number | null;
  readonly slopeP: number | null;
  readonly curvature: number | null;
  readonly curvatureP: number | null;
  readonly pageL: number | null;
  readonly pageP: number | null;
  readonly curve: {
    readonly level: number;
    readonly fit: number;
    readonly low: number | null;
    readonly high: number | null;
  }[];
  readonly best: { readonly level: number; readonly low: number | null; readonly high: number | null } | null;
}

export interface JarTest {
  readonly f: number;
  readonly dfLevel: number;
  readonly dfJar: number;
  readonly p: number;
}

export interface AttributeAnalysis {
  readonly attribute: string;
  readonly tasters: number;
  readonly samples: number;
  readonly scores: number;
  readonly missing: number;
  readonly means: SampleMean[];
  readonly test: SampleTest | null;
  readonly variances: {
    readonly taster: number | null;
    readonly tasterBySample: number | null;
    readonly error: number | null;
  };
  readonly pairs: PairDifference[] | null;
  readonly versusControl: ControlDifference[] | null;
  readonly ranks: RankTest | null;
  readonly trend: Trend | null;
  readonly jars: JarTest | null;
  readonly reasons: Reason[];
}

export interface TasterForm {
  readonly taster: string;
  readonly attribute: string;
  readonly discriminationP: number | null;
  readonly repeatability: number | null;
  readonly agreement: number | null;
  readonly reasons: Reason[];
}

export interface PanelAnalysis {
  readonly attributes: AttributeAnalysis[];
  readonly tasters: TasterForm[];
}
