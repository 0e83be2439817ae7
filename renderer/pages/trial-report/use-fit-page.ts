import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from 'react';

const largest_pt = 10;
const smallest_pt = 5;
/** Paper breaks lines a little otherwise than the window does. */
const slack = 0.985;

/**
 * Sets the size of the words so that everything fits into its sheet.
 *
 * Works on an element whose measures hang on its type size alone, inside a parent of fixed height. Says when even the smallest is too large.
 */
export function useFitPage(): { readonly ref: RefObject<HTMLDivElement | null>; readonly isTooLong: boolean } {
  const ref = useRef<HTMLDivElement>(null);
  const [isTooLong, setTooLong] = useState(false);

  function fit() {
    const [element, sheet] = [ref.current, ref.current?.parentElement];
    if (element === null || sheet == null) return;
    const { paddingTop, paddingBottom } = getComputedStyle(sheet);
    const room = (sheet.clientHeight - Number.parseFloat(paddingTop) - Number.parseFloat(paddingBottom)) * slack;
    let size = largest_pt;
    for (; size > smallest_pt; size -= 0.25) {
      element.style.fontSize = `${size}pt`;
      if (element.scrollHeight <= room) break;
    }
    element.style.fontSize = `${size}pt`;
    setTooLong(element.scrollHeight > room);
  }

  useLayoutEffect(fit);
  useEffect(() => {
    const element = ref.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    // What comes late, such as cautions and fonts, makes it grow. In the next frame: an observer must not change what it observes.
    let frame = 0;
    const observer = new ResizeObserver(() => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(fit);
    });
    observer.observe(element);
    return () => {
      cancelAnimationFrame(frame);
      observer.disconnect();
    };
  });
  return { ref, isTooLong };
}
