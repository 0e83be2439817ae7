import type { CountedWork } from '#shared/carriage.ts';
import type { ComputingName, InputOf, KitchenName, ValueOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';

/** How a long request tells where it is, and learns that it should stop. */
export interface Watch {
  progress(done: number, total: number, work?: CountedWork): void;
  /** @throws Failure `stopped` when the caller asked for it; the transaction around it rolls back */
  assertGoing(): void;
}

export type Handler<Name extends KitchenName> = (
  kitchen: Kitchen,
  input: InputOf<Name>,
  watch: Watch,
) => ValueOf<Name> | Promise<ValueOf<Name>>;

/** The handlers of some of the requests, each typed by its contract. */
export type Handlers<Name extends KitchenName> = { readonly [Each in Name]: Handler<Each> };

/** Handlers of requests that only compute: no kitchen is opened for them. */
export type Computers<Name extends ComputingName> = {
  readonly [Each in Name]: (input: InputOf<Each>, watch: Watch) => ValueOf<Each>;
};
