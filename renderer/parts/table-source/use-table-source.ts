import { useEffect, useRef, useState } from 'react';
import { useHandedFile } from '#renderer/app/use-handed-file.ts';
import { fileFaultWords, readTextFile } from '#renderer/format/read-text-file.ts';

/** Beyond this many characters a table is not shown for typing: a field that holds megabytes makes the window slow. */
const mostShown = 200_000;
const settles_ms = 200;

/** A table that somebody pastes, types, drops or chooses. */
export interface TableSource {
  /** As it stands in the field. */
  readonly text: string;
  /** As it stood when the typing last paused: what is looked at. */
  readonly settled: string;
  /** Another number for each settled table, so that a long text need not be compared. */
  readonly turn: number;
  readonly isSettled: boolean;
  readonly isGiven: boolean;
  /** A table too long for a field: the file it came from, or null when it was pasted, and how many lines it has. */
  readonly long: { readonly file: string | null; readonly lines: number } | null;
  readonly fault: string | undefined;
  readonly write: (text: string) => void;
  readonly readFile: (file: File | undefined) => Promise<void>;
}

function headingOf(table: string): string {
  return table.slice(0, 10_000).split(/\r?\n/, 1)[0] ?? '';
}

function linesOf(text: string): number {
  let lines = text.endsWith('\n') || text === '' ? 0 : 1;
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lines += 1;
  return lines;
}

/**
 * The table that an import goes by.
 *
 * @param onNewTable told when another heading row stands there: what was said of the old columns does not hold
 */
export function useTableSource(onNewTable: () => void): TableSource {
  const [text, setText] = useState('');
  const [file, setFile] = useState<string | null>(null);
  const [settled, setSettled] = useState({ text: '', turn: 0 });
  const [fault, setFault] = useState<string | undefined>(undefined);
  const heading = useRef('');

  useEffect(() => {
    const timer = setTimeout(
      () => setSettled((before) => (before.text === text ? before : { text, turn: before.turn + 1 })),
      settles_ms,
    );
    return () => clearTimeout(timer);
  }, [text]);

  function put(next: string, from: string | null): void {
    const nextHeading = headingOf(next);
    if (nextHeading !== heading.current) onNewTable();
    heading.current = nextHeading;
    setFile(from);
    setText(next);
  }

  async function readFile(chosen: File | undefined): Promise<void> {
    if (chosen === undefined) return;
    const read = await readTextFile(chosen);
    setFault(read.kind === 'fault' ? fileFaultWords[read.why] : undefined);
    if (read.kind === 'text') put(read.text, chosen.name);
  }

  useHandedFile((handed) => void readFile(handed));

  return {
    text,
    settled: settled.text,
    turn: settled.turn,
    isSettled: settled.text === text,
    isGiven: settled.text.trim() !== '',
    long: text.length > mostShown ? { file, lines: linesOf(text) } : null,
    fault,
    write: (next) => put(next, null),
    readFile,
  };
}
