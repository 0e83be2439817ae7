import { useMemo } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { useNow } from '#renderer/format/use-now.ts';
import { compositionsOf } from './jar-contents.ts';
import type { ShelfSurroundings } from './trial-shelf-jars.tsx';

/** What drawing jars needs to know besides the jars: the pantry, the measures, the time. */
export function useShelfSurroundings(): ShelfSurroundings {
  const { data } = useAnswer('pantry:list', {});
  const compositionOf = useMemo(() => compositionsOf(data?.ingredients ?? []), [data]);
  return { compositionOf, measures: useMeasures(), now: useNow() };
}
