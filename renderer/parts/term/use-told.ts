import { useEffect, useState } from 'react';
import { listenToPlaces, settlePlaces, stopAt, wordsBeside } from './term-places.ts';
import type { TermName } from './term-words.ts';

/** What is told now: whose words, and by what it was called. */
export interface Told {
  readonly key: number;
  readonly element: HTMLElement;
  readonly names: readonly TermName[];
  readonly by: 'hover' | 'focus';
}

/** Long enough that a pointer passing by opens nothing, and that it can cross over to the tip. */
const opens_ms = 120;
const closes_ms = 250;

function namesOn(element: HTMLElement | null, kind: 'says' | 'tells'): TermName[] {
  return (element?.dataset[kind]?.split(' ') ?? []) as TermName[];
}

/** What tells for something that has the focus: itself, or its label. */
function tellerOf(focused: Element): HTMLElement | null {
  if (focused.matches('[data-tells]')) return focused as HTMLElement;
  const labels = (focused as HTMLInputElement).labels;
  return [...(labels ?? [])].find((label) => label.dataset.tells !== undefined) ?? null;
}

/** Goes from one word of the page to another by the arrows: together they are one stop of Tab. */
function arrowTo(event: KeyboardEvent): void {
  const { target, key } = event;
  if (!(target instanceof HTMLElement) || !target.matches('dfn[data-tells]')) return;
  if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
  const words = wordsBeside(target);
  const here = words.indexOf(target);
  const to = { ArrowRight: here + 1, ArrowLeft: here - 1, Home: 0, End: words.length - 1 }[key];
  if (to === undefined) return;
  event.preventDefault();
  words[to]?.focus();
}

/** Follows pointer, focus and Escape through the window. */
class Watch {
  private hovered: Told | null = null;
  private focused: Told | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** What the pointer came to last: a word, the tip itself, or nothing. */
  private over: Element | null = null;
  private count = 0;
  private at = '';
  private readonly show: (told: Told | null) => void;

  constructor(show: (told: Told | null) => void) {
    this.show = show;
  }

  private told(element: HTMLElement, by: Told['by']): Told {
    this.count += 1;
    return { key: this.count, element, by, names: namesOn(element, by === 'hover' ? 'says' : 'tells') };
  }

  private hover(told: Told | null, after_ms: number): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      this.hovered = told;
      this.tell();
    }, after_ms);
  }

  private tell(): void {
    this.show(this.hovered ?? this.focused);
  }

  readonly pointerMoved = ({ target, pointerType, clientX, clientY }: PointerEvent): void => {
    if (pointerType === 'touch' || !(target instanceof Element)) return;
    // Where the page has moved under a pointer that rests, nobody pointed.
    const at = `${clientX} ${clientY}`;
    if (this.at === at) return;
    this.at = at;
    const over = target.closest('.term-tip, [data-says]');
    if (over === this.over) return;
    this.over = over;
    clearTimeout(this.timer);
    if (!(over instanceof HTMLElement)) {
      if (this.hovered !== null) this.hover(null, closes_ms);
    } else if (!over.matches('.term-tip') && over !== this.hovered?.element) {
      this.hover(this.told(over, 'hover'), opens_ms);
    }
  };

  readonly pointerGone = (): void => {
    this.over = null;
    this.hover(null, closes_ms);
  };

  readonly focusIn = ({ target }: FocusEvent): void => {
    if (!(target instanceof Element)) return;
    const element = tellerOf(target);
    clearTimeout(this.timer);
    this.hovered = null;
    this.focused = element === null ? null : this.told(element, 'focus');
    this.tell();
    if (element?.matches('dfn') === true) stopAt(element);
  };

  readonly focusOut = (): void => {
    this.focused = null;
    this.tell();
  };

  /** Whoever types has read it; it would only lie over the field above. */
  readonly typed = ({ target }: Event): void => {
    if (this.focused === null || !(target instanceof Element) || tellerOf(target) !== this.focused.element) return;
    this.focused = null;
    this.tell();
  };

  readonly key = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') {
      arrowTo(event);
      return;
    }
    clearTimeout(this.timer);
    if (this.hovered === null && this.focused === null) return;
    // The tip closes first; what it lies over stays open.
    event.preventDefault();
    event.stopPropagation();
    this.hovered = null;
    this.focused = null;
    this.tell();
  };

  /** What was told may have gone from the page. */
  readonly placesChanged = (): void => {
    if (this.hovered?.element.isConnected === false) this.hovered = null;
    if (this.focused?.element.isConnected === false) this.focused = null;
    this.tell();
  };

  readonly stop = (): void => clearTimeout(this.timer);
}

/** What the window tells now; null: nothing. */
export function useTold(): Told | null {
  const [told, setTold] = useState<Told | null>(null);
  useEffect(() => {
    const watch = new Watch(setTold);
    const stopListening = listenToPlaces(watch.placesChanged);
    const gone = new AbortController();
    const { signal } = gone;
    document.addEventListener('pointermove', watch.pointerMoved, { signal, passive: true });
    document.documentElement.addEventListener('pointerleave', watch.pointerGone, { signal });
    document.addEventListener('focusin', watch.focusIn, { signal });
    document.addEventListener('focusout', watch.focusOut, { signal });
    document.addEventListener('input', watch.typed, { signal });
    window.addEventListener('keydown', watch.key, { signal, capture: true });
    // What opens, closes or is laid out anew may show a place, or hide one.
    document.addEventListener('toggle', ({ target }) => target instanceof HTMLDetailsElement && settlePlaces(), {
      signal,
      capture: true,
    });
    window.addEventListener('resize', settlePlaces, { signal });
    return () => {
      gone.abort();
      watch.stop();
      stopListening();
    };
  }, []);
  return told;
}
