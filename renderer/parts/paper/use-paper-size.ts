import { useState } from 'react';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { type PaperName, type PaperSize, paperSizes } from './paper-size.ts';

export interface ChosenPaper {
  readonly name: PaperName;
  readonly size: PaperSize;
  choose(name: PaperName): void;
}

/** Which paper is printed on: the usual one of the kitchen's measures until another is chosen. */
export function usePaperSize(): ChosenPaper {
  const { system } = useMeasures();
  const [chosen, choose] = useState<PaperName | null>(null);
  const name = chosen ?? (system === 'metric' ? 'a4' : 'letter');
  return { name, size: paperSizes[name], choose };
}
