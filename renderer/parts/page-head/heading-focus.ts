// A new place starts with its heading, for those who listen. A heading that comes later, with its screen or its answer, takes the focus then.

let isAwaited = false;

/** Gives the focus to the heading within; where there is none yet, to the next one that comes. */
export function startAtHeading(within: Element | null): void {
  const heading = within?.querySelector('h1') ?? null;
  isAwaited = heading === null;
  heading?.focus({ preventScroll: true });
}

/** A heading has come: it takes the focus where it is awaited and nobody has gone elsewhere since. */
export function headingCame(heading: HTMLElement | null): void {
  if (!isAwaited || heading === null) return;
  isAwaited = false;
  const { activeElement } = document;
  if (activeElement === null || activeElement === document.body) heading.focus({ preventScroll: true });
}
