import type { z } from 'zod';

/**
 * One request of the contract: what goes in, what comes out, and how it behaves.
 *
 * `needs` says whether a kitchen is opened for it at all; `writes` requests are refused on a read-only store; `long` requests report
 * progress and can be stopped. Those of `shared/apart-requests.ts` do not hold up the others.
 */
export interface RequestShape<
  Input extends z.ZodType = z.ZodType,
  Output extends z.ZodType = z.ZodType,
  Needs extends 'kitchen' | 'nothing' = 'kitchen' | 'nothing',
> {
  readonly input: Input;
  readonly output: Output;
  readonly needs: Needs;
  readonly writes: boolean;
  readonly long: boolean;
}

interface Options {
  readonly long?: boolean;
}

/** A request that only computes from its input: it works without any kitchen. */
export function computes<Input extends z.ZodType, Output extends z.ZodType>(
  input: Input,
  output: Output,
  { long = false }: Options = {},
): RequestShape<Input, Output, 'nothing'> {
  return { input, output, needs: 'nothing', writes: false, long };
}

/** A request that reads the kitchen. */
export function reads<Input extends z.ZodType, Output extends z.ZodType>(
  input: Input,
  output: Output,
  { long = false }: Options = {},
): RequestShape<Input, Output, 'kitchen'> {
  return { input, output, needs: 'kitchen', writes: false, long };
}

/** A request that changes the kitchen. */
export function writes<Input extends z.ZodType, Output extends z.ZodType>(
  input: Input,
  output: Output,
  { long = false }: Options = {},
): RequestShape<Input, Output, 'kitchen'> {
  return { input, output, needs: 'kitchen', writes: true, long };
}
