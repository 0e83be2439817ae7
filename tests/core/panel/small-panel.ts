import { analysePanel } from '#core/panel/analyse.ts';
import type { PanelInput, PanelScore } from '#core/panel/panel-analysis.ts';
import { panelAnalysis } from '#shared/contract/panel.ts';

/** Analyses and holds the answer to the contract: finite numbers only, every reason from the closed list. */
export function analyse(input: PanelInput) {
  const answer = analysePanel(input);
  panelAnalysis.parse(answer);
  return answer;
}

export function table(rows: (number | null)[][], repeats = 1): PanelScore[] {
  return rows.flatMap((row, taster) =>
    row.flatMap((score, place) =>
      score === null
        ? []
        : [{ taster: `t${taster}`, sample: `s${Math.floor(place / repeats)}`, attribute: 'liking', score }],
    ),
  );
}

export const codesOf = (answer: ReturnType<typeof analyse>): string[] =>
  (answer.attributes[0]?.reasons ?? []).map(({ code, path }) => `${code} at ${path.slice(2).join('.')}`);

export const plain = [
  [5, 6, 8],
  [4, 6, 7],
  [6, 6, 9],
  [3, 5, 5],
];
