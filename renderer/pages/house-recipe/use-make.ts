import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { faultAt } from '#renderer/parts/field/fault-at.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type MeasuredFormula, measuredFormula, type ToolName } from './measured-formula.ts';
import { words } from './words.ts';

export type Version = ValueOf<'recipes:open'>['versionList'][number];

/** How much is to be made and how it is weighed: the page and its printed card show the same. */
export interface Make {
  readonly typed: string;
  readonly setTyped: (typed: string) => void;
  readonly fault: string | undefined;
  readonly tool: ToolName;
  readonly setTool: (tool: ToolName) => void;
  readonly volume_mL: number;
  readonly base_mL: number;
  readonly measured: MeasuredFormula;
}

/** The version's formula for a typed volume, rounded to what the kitchen can measure. */
export function useMake(recipe: string, version: Version): Make {
  const measures = useMeasures();
  const [typed, setTyped] = useState(String(Math.round(version.volume_mL)));
  const [tool, setTool] = useState<ToolName>('one');
  const read = typedNumber(typed);
  const isVolume = read.kind === 'number' && read.value > 0;
  const volume_mL = isVolume ? read.value : version.volume_mL;
  const scaled = useAnswer('recipes:scale', { recipe, version: version.number, volume_mL }, { keepLast: true });
  const base_mL = scaled.data?.base_mL ?? version.base_mL;
  const additions = scaled.data?.additions ?? version.formula.additions;
  return {
    typed,
    setTyped,
    fault: isVolume ? faultAt(scaled.error, 'volume_mL') : words.notVolume,
    tool,
    setTool,
    volume_mL: scaled.data?.volume_mL ?? version.volume_mL,
    base_mL,
    measured: measuredFormula(base_mL, additions, tool, measures),
  };
}
