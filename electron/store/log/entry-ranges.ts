/** The numbers of log entries as a short text: runs from first to last, as JSON. */
export function rangesOf(ids: readonly number[]): string {
  const ranges: [number, number][] = [];
  for (const id of [...new Set(ids)].sort((a, b) => a - b)) {
    const last = ranges.at(-1);
    if (last !== undefined && last[1] === id - 1) last[1] = id;
    else ranges.push([id, id]);
  }
  return JSON.stringify(ranges);
}

/** The numbers again from the text that `rangesOf` wrote. */
export function entriesOf(ranges: string): number[] {
  return (JSON.parse(ranges) as [number, number][]).flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, offset) => first + offset),
  );
}
