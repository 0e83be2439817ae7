import type { Failure } from '#shared/failure.ts';

/** The failure's sentence when its path begins with these steps. */
export function faultAt(failure: Failure | null, ...path: readonly (string | number)[]): string | undefined {
  if (failure?.path === undefined) return undefined;
  return path.every((step, place) => failure.path?.[place] === step) ? failure.message : undefined;
}

/** The failure's sentence when it belongs to none of these fields: it is shown above the form's buttons. */
export function faultElsewhere(failure: Failure | null, fields: readonly string[]): string | undefined {
  if (failure === null) return undefined;
  const first = failure.path?.[0];
  return first !== undefined && fields.includes(String(first)) ? undefined : failure.message;
}
