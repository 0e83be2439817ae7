import type { TermName } from './term-words.ts';

// Where the trade's words stand on the page, in the order of reading. A word is told where it stands first; what comes later leaves it.
// So it is the drawn page that decides, after each drawing: no part needs to know what the others say.

/** A word in a sentence that takes the focus itself, or what belongs to something that does: a field's label, a link. */
export type TermKind = 'word' | 'control';

export interface PlaceState {
  /** The words that this place is the first to say. */
  readonly tells: readonly TermName[];
  /** Tab comes here; from here the arrows go to the other words of the page. */
  readonly isStop: boolean;
}

export interface TermPlace {
  readonly element: HTMLElement;
  readonly kind: TermKind;
  readonly names: readonly TermName[];
  readonly hear: (state: PlaceState) => void;
}

export const silent: PlaceState = { tells: [], isStop: false };

const places = new Set<TermPlace>();
const lastHeard = new WeakMap<TermPlace, string>();
const stopOf = new WeakMap<Element, HTMLElement>();
const wordsOf = new WeakMap<Element, readonly HTMLElement[]>();
const listeners = new Set<() => void>();
let toldNames: readonly TermName[] = [];
let isUnsettled = false;

/** Words are told once on the page, and once in each sheet over it. */
export function scopeOf(element: Element): Element {
  return element.closest('dialog') ?? element.closest('main') ?? document.body;
}

/** What takes the focus for a label or a link; null where nothing can. */
function controlOf(element: HTMLElement): HTMLElement | null {
  const control = element instanceof HTMLLabelElement ? element.control : element;
  return control === null || control.matches(':disabled') ? null : control;
}

function isHere({ element, kind }: TermPlace): boolean {
  if (!element.isConnected || (element.checkVisibility?.() ?? true) === false) return false;
  return kind === 'word' || controlOf(element) !== null;
}

function inReadingOrder(one: TermPlace, other: TermPlace): number {
  return one.element.compareDocumentPosition(other.element) & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1;
}

function hear(place: TermPlace, state: PlaceState): void {
  const said = `${state.isStop} ${state.tells.join(' ')}`;
  if ((lastHeard.get(place) ?? 'false ') === said) return;
  lastHeard.set(place, said);
  place.hear(state);
}

function settleScope(scope: Element, within: readonly TermPlace[]): readonly TermName[] {
  const told = new Set<TermName>();
  const asked = new Set<TermName>();
  const states = new Map<TermPlace, readonly TermName[]>();
  for (const place of within) {
    // A field tells its word even where a sentence said it above: whoever types has left the sentence.
    const before = place.kind === 'word' ? told : asked;
    const tells = place.names.filter((name) => !before.has(name));
    for (const name of tells) told.add(name);
    if (place.kind === 'control') for (const name of tells) asked.add(name);
    states.set(place, tells);
  }
  const words = within.filter((place) => place.kind === 'word' && (states.get(place)?.length ?? 0) > 0);
  const kept = stopOf.get(scope);
  const stop = words.find(({ element }) => element === kept) ?? words[0];
  wordsOf.set(
    scope,
    words.map(({ element }) => element),
  );
  for (const [place, tells] of states) hear(place, { tells, isStop: place === stop });
  return [...told];
}

/** Decides anew which place tells which word. */
export function settlePlaces(): void {
  isUnsettled = false;
  const byScope = new Map<Element, TermPlace[]>();
  for (const place of places) {
    if (!isHere(place)) {
      hear(place, silent);
      continue;
    }
    const scope = scopeOf(place.element);
    const within = byScope.get(scope);
    if (within === undefined) byScope.set(scope, [place]);
    else within.push(place);
  }
  const told = new Set<TermName>();
  for (const [scope, within] of byScope)
    for (const name of settleScope(scope, within.sort(inReadingOrder))) told.add(name);
  toldNames = [...told].sort();
  for (const listener of listeners) listener();
}

/** Decides anew if a place came or went since. */
export function settleIfNeeded(): void {
  if (isUnsettled) settlePlaces();
}

/** A place has come; gives back what takes it away. */
export function addPlace(place: TermPlace): () => void {
  places.add(place);
  isUnsettled = true;
  return () => {
    places.delete(place);
    isUnsettled = true;
    queueMicrotask(settleIfNeeded);
  };
}

/** Tab comes back to this word from now on. */
export function stopAt(word: HTMLElement): void {
  const scope = scopeOf(word);
  if (stopOf.get(scope) === word) return;
  stopOf.set(scope, word);
  settlePlaces();
}

/** The words of a page that take the focus, in the order of reading. */
export function wordsBeside(word: HTMLElement): readonly HTMLElement[] {
  return wordsOf.get(scopeOf(word)) ?? [];
}

/** The names that are told somewhere now. */
export function namesTold(): readonly TermName[] {
  return toldNames;
}

export function listenToPlaces(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
