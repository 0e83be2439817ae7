import type { DeskEvent } from '#shared/carriage.ts';

const typedInto = new Set(['date', 'email', 'number', 'password', 'search', 'tel', 'text', 'time', 'url']);

/** Says whether an element is one that people type into, with an undo of its own. */
export function isTextField(element: Element | null): boolean {
  if (element instanceof HTMLInputElement) return typedInto.has(element.type) && !element.readOnly;
  if (element instanceof HTMLTextAreaElement) return !element.readOnly;
  return element instanceof HTMLElement && element.isContentEditable;
}

/**
 * The menu's undo and redo belong to the text field that has the focus, if one has; otherwise to the workbench.
 *
 * @returns true when the text field took the event, and the page should not see it
 */
export function undoInText(event: DeskEvent, page: Document): boolean {
  if (event.kind !== 'menu' || (event.act !== 'undo' && event.act !== 'redo')) return false;
  if (!isTextField(page.activeElement)) return false;
  // Called deprecated, yet the one way to a field's own undo from a script.
  page.execCommand(event.act);
  return true;
}
