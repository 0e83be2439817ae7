import type { DecimalMark } from '#core/words/figures.ts';
import type { Envelope } from './failure.ts';

// How a request travels, whichever host carries it. The page knows only `Bridge`.

/** How the answer's words and figures are said; a request without is answered in English, with a decimal point. */
export interface AskedWays {
  /** A BCP 47 tag. */
  readonly language: string;
  readonly decimal: DecimalMark;
}

/** One request under way. `ask` is the caller's own mark for it: progress and stop refer to it. */
export interface AskMessage {
  readonly ask: string;
  readonly name: string;
  readonly input: unknown;
  readonly ways?: AskedWays;
}

/** What a long request is busy with, where a person can count it: so many of them, so many bytes. */
export interface CountedWork {
  readonly what: 'photos';
  readonly done: number;
  readonly total: number;
  readonly done_bytes: number;
  readonly total_bytes: number;
}

export interface ProgressEvent {
  readonly kind: 'progress';
  readonly ask: string;
  readonly done: number;
  readonly total: number;
  readonly work?: CountedWork;
}

/** Rows of these tables changed: whoever shows them reads them again. */
export interface ChangedEvent {
  readonly kind: 'changed';
  readonly step: number;
  readonly tables: readonly string[];
}

/** The window's menu asks the page to act, such as `go:/trials` or `undo`. */
export interface MenuEvent {
  readonly kind: 'menu';
  readonly act: string;
}

export type DeskEvent = ProgressEvent | ChangedEvent | MenuEvent;

/** What a page can do: ask, stop what it asked, listen. */
export interface Bridge {
  ask(message: AskMessage): Promise<Envelope<unknown>>;
  stop(ask: string): void;
  listen(listener: (event: DeskEvent) => void): () => void;
}

/** The name under which the preload script offers the bridge on `window`. */
export const bridgeName = 'sidejar';
