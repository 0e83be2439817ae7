/**
 * The failures that cross the boundary between the desk and whoever asks it.
 *
 * If a person's data can cause it, it is one of these. Anything else is our own mistake and
 * arrives as `internal`, without a stack trace.
 */
export const failureCodes = [
  'unknown-request',
  'ill-formed-json',
  'too-large',
  'invalid-input',
  'not-found',
  'refused',
  'changed-since',
  'nothing-to-undo',
  'stopped',
  'store-missing',
  'store-read-only',
  'store-locked',
  'store-not-a-kitchen',
  'store-newer',
  'store-full',
  'store-damaged',
  'node-too-old',
  'not-allowed',
  'internal',
] as const;

export type FailureCode = (typeof failureCodes)[number];

/** What a caller receives when a request fails: a code for programs, a sentence for people, the place in the input. */
export interface FailureReport {
  readonly code: FailureCode;
  readonly message: string;
  readonly path?: readonly (string | number)[];
}

/** Every request settles as one of these two. */
export type Envelope<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly error: FailureReport };

/** A failure on its way to the boundary. Thrown inside desk and store, turned into an envelope by `desk.handle`. */
export class Failure extends Error {
  readonly code: FailureCode;
  readonly path: readonly (string | number)[] | undefined;

  constructor(code: FailureCode, message: string, path?: readonly (string | number)[]) {
    super(message);
    this.name = 'Failure';
    this.code = code;
    this.path = path;
  }

  report(): FailureReport {
    return this.path === undefined
      ? { code: this.code, message: this.message }
      : { code: this.code, message: this.message, path: this.path };
  }
}
