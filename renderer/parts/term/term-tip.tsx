import { useLayoutEffect, useRef, useSyncExternalStore } from 'react';
import { createPortal } from 'react-dom';
import { listenToPlaces, namesTold, scopeOf, wordsBeside } from './term-places.ts';
import { termName, termWords } from './term-words.ts';
import { tipPlace } from './tip-place.ts';
import { meaningId } from './use-term-place.ts';
import { type Told, useTold } from './use-told.ts';
import './term.css';

/** Where the tip belongs to: of a label, down to the control's end. */
function boxOf({ element }: Told) {
  const [line = element.getBoundingClientRect()] = element.getClientRects();
  const control = element instanceof HTMLLabelElement ? element.control : null;
  return {
    left: line.left,
    top: line.top,
    bottom: Math.max(line.bottom, control?.getBoundingClientRect().bottom ?? 0),
  };
}

function Tip({ told }: { readonly told: Told }) {
  const tip = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const shown = tip.current;
    if (shown === null) return;
    // In the top layer no box cuts it off, and it lies over a sheet.
    shown.showPopover?.();
    const stand = () => {
      const { clientWidth: width, clientHeight: height } = document.documentElement;
      const prefers = told.element.matches('dfn') ? 'below' : 'above';
      const { left, top } = tipPlace(boxOf(told), shown.getBoundingClientRect(), { width, height }, prefers);
      shown.style.left = `${left}px`;
      shown.style.top = `${top}px`;
    };
    stand();
    window.addEventListener('scroll', stand, { capture: true, passive: true });
    window.addEventListener('resize', stand);
    return () => {
      window.removeEventListener('scroll', stand, { capture: true });
      window.removeEventListener('resize', stand);
    };
  }, [told]);
  const isOne = told.names.length === 1;
  const leadsOn = told.by === 'focus' && told.element.matches('dfn') && wordsBeside(told.element).length > 1;
  return (
    <div ref={tip} role="tooltip" popover="manual" className="term-tip no-print">
      <div>
        {told.names.map((name) => (
          <p key={name}>
            {isOne ? null : <strong>{termName(name)}: </strong>}
            {termWords[name].meaning}
          </p>
        ))}
      </div>
      {leadsOn ? (
        <span className="term-tip-keys" aria-hidden="true">
          ← →
        </span>
      ) : null}
    </div>
  );
}

/** The one tip of the window, for whatever word of the trade the pointer or the focus is on, and the meanings that the page refers to. */
export function TermTip() {
  const told = useTold();
  const names = useSyncExternalStore(listenToPlaces, namesTold);
  return (
    <>
      <div hidden>
        {names.map((name) => (
          <span key={name} id={meaningId(name)}>
            {termWords[name].meaning}
          </span>
        ))}
      </div>
      {/* Within a sheet, else what lies behind it could not be hovered. */}
      {told === null ? null : createPortal(<Tip key={told.key} told={told} />, scopeOf(told.element))}
    </>
  );
}
