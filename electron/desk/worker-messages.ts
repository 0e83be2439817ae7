import type { AskedWays, ChangedEvent, ProgressEvent } from '#shared/carriage.ts';
import type { Envelope } from '#shared/failure.ts';

// What passes between a host and the desk's worker thread.

/** What a desk's thread is started with. */
export interface DeskData {
  readonly store: string;
  readonly makes: 'any' | 'writes';
  /** Where the program's own mistakes are noted; null notes none. */
  readonly log: string | null;
  /** The folder of a person's own translations; null for none. */
  readonly ownWords: string | null;
  /** Folders where kitchens mostly lie, and whether the host can ask with the system's dialog. */
  readonly near: readonly string[];
  readonly hasDialog: boolean;
  /** Works behind the others: what it does may last, and nobody sits before it. */
  readonly stepsBack: boolean;
}

export type ToDesk =
  | {
      readonly kind: 'ask';
      readonly ask: string;
      readonly name: string;
      readonly input: unknown;
      readonly ways?: AskedWays;
      readonly stopFlag: Int32Array;
    }
  | { readonly kind: 'close' };

export type FromDesk =
  | { readonly kind: 'settled'; readonly ask: string; readonly envelope: Envelope<unknown> }
  | ProgressEvent
  | ChangedEvent;
