import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { amountOf, typedVolume } from '#renderer/format/typed-amount.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { type Amount, useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { faultAt } from '#renderer/parts/field/fault-at.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { PantryRow } from './known-additions.ts';
import { type MeasuredFormula, measuredFormula, type ToolName } from './measured-formula.ts';

export type Version = ValueOf<'recipes:open'>['versionList'][number];

/** How much is to be made and how it is weighed: the page and its printed card show the same. */
export interface Make {
  readonly amount: Amount;
  readonly fault: string | undefined;
  readonly tool: ToolName;
  readonly setTool: (tool: ToolName) => void;
  readonly volume_mL: number;
  readonly base_mL: number;
  readonly measured: MeasuredFormula;
  readonly pantry: readonly PantryRow[];
}

/** The version's formula for a typed volume, rounded to what the kitchen can measure. */
export function useMake(recipe: string, version: Version): Make {
  const measures = useMeasures();
  const pantry = useAnswer('pantry:list', {}).data?.ingredients ?? [];
  const amount = useAmount(measures.volume(version.volume_mL), (text) => typedVolume(text, measures.system));
  const [tool, setTool] = useState<ToolName>('one');
  // Until somebody writes, it is what was tried, to the millilitre.
  const asked = amount.isChanged ? (amountOf(amount.typed) ?? version.volume_mL) : version.volume_mL;
  const scaled = useAnswer('recipes:scale', { recipe, version: version.number, volume_mL: asked }, { keepLast: true });
  const base_mL = scaled.data?.base_mL ?? version.base_mL;
  const additions = scaled.data?.additions ?? version.formula.additions;
  return {
    amount,
    fault: faultAt(scaled.error, 'volume_mL'),
    tool,
    setTool,
    volume_mL: scaled.data?.volume_mL ?? version.volume_mL,
    base_mL,
    measured: measuredFormula(base_mL, additions, tool, measures, pantry),
    pantry,
  };
}
