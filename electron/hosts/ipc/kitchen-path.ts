import { isAbsolute } from 'node:path';

const longest = 4096;

/** Whether something can be where a kitchen's file lies: a whole path that ends in `.sidejar`. Leaves out whether it is there. */
export function isKitchenPath(value: unknown): value is string {
  return (
    typeof value === 'string' &&
    value.length <= longest &&
    !value.includes('\0') &&
    isAbsolute(value) &&
    /\.sidejar$/i.test(value)
  );
}
