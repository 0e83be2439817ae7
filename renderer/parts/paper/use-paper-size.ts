import { useKeptChoice } from '#renderer/app/use-kept-choice.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { type PaperName, type PaperSize, paperSizes } from './paper-size.ts';

export interface ChosenPaper {
  readonly name: PaperName;
  readonly size: PaperSize;
  choose(name: PaperName): void;
}

function keptPaper(body: unknown): PaperName | null {
  return (Object.keys(paperSizes) as PaperName[]).find((name) => name === body) ?? null;
}

/** Which paper is printed on: that of the last time; until one was chosen, the usual one of the kitchen's measures. */
export function usePaperSize(): ChosenPaper {
  const { system } = useMeasures();
  const [chosen, choose] = useKeptChoice('print paper', keptPaper);
  const name = chosen ?? (system === 'metric' ? 'a4' : 'letter');
  return { name, size: paperSizes[name], choose };
}
