/** A moment as the store keeps it: UTC with milliseconds, so that text order is time order. */
export function storedMoment(moment: string): string {
  return new Date(moment).toISOString();
}
