import type { z } from 'zod';

/**
 * One request of the contract: what goes in, what comes out, and how it behaves.
 *
 * `writes` requests are refused on a read-only store; `long` requests report progress and can be stopped.
 */
export interface RequestShape<Input extends z.ZodType = z.ZodType, Output extends z.ZodType = z.ZodType> {
  readonly input: Input;
  readonly output: Output;
  readonly writes: boolean;
  readonly long: boolean;
}

/** A request that only reads. */
export function reads<Input extends z.ZodType, Output extends z.ZodType>(
  input: Input,
  output: Output,
  options: { long?: boolean } = {},
): RequestShape<Input, Output> {
  return { input, output, writes: false, long: options.long ?? false };
}

/** A request that changes the store. */
export function writes<Input extends z.ZodType, Output extends z.ZodType>(
  input: Input,
  output: Output,
  options: { long?: boolean } = {},
): RequestShape<Input, Output> {
  return { input, output, writes: true, long: options.long ?? false };
}
