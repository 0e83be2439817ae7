import { analysePanel } from '#core/panel/analyse.ts';
import type { AttributeAnalysis, PanelScore } from '#core/panel/panel-analysis.ts';

// Invented panels whose answer is known beforehand.

/** Middle score of each sample, and each taster's own wavers, in a fixed pattern so that every test sees the same panel. */
export interface InventedPanel {
  readonly middles: Readonly<Record<string, number>>;
  readonly tasters: number;
  /** How far a score wavers about its middle. */
  readonly waver: number;
  readonly levels?: Readonly<Record<string, number>>;
  readonly control?: string;
  /** Jars of each level, each scored once by each taster. */
  readonly jars?: number;
}

const pattern = [0.9, -1.1, 0.3, -0.4, 1.2, -0.8, 0.1, -0.2, 0.6, -0.7, 0.5, -0.3, 1.0];

export function scoresOf(attribute: string, { middles, tasters, waver, jars = 1 }: InventedPanel): PanelScore[] {
  let turn = 0;
  return Object.entries(middles).flatMap(([sample, middle]) =>
    Array.from({ length: jars }, (_, jar) =>
      Array.from({ length: tasters }, (_unused, taster) => {
        turn += 1;
        const score = middle + (pattern[(turn * 5 + taster) % pattern.length] ?? 0) * waver;
        return { taster: `T${taster}`, sample, attribute, score, jar: `${sample}/${jar}` };
      }),
    ).flat(),
  );
}

/** The analysis of one or more invented attributes. */
export function analysed(panels: Readonly<Record<string, InventedPanel>>): AttributeAnalysis[] {
  const [first] = Object.values(panels);
  return analysePanel({
    scores: Object.entries(panels).flatMap(([attribute, panel]) => scoresOf(attribute, panel)),
    ...(first?.levels === undefined ? {} : { levels: first.levels }),
    ...(first?.control === undefined ? {} : { control: first.control }),
    liking: 'liking',
  }).attributes;
}

/** Words that no finding may say. */
export const forbidden =
  /\bp\s*[=<>]|p-value|prov(e|ed|en|es)\b|proof|no difference|not different|significan|\bsafe|guarantee|NaN|Infinity|undefined|null|\[object|-\d/i;
