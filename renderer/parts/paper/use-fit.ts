import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from 'react';

const step = 0.025;

export interface Fit {
  readonly ref: RefObject<HTMLDivElement | null>;
  /** True when even the smallest does not fit: something is cut off. */
  readonly isTooLong: boolean;
  /** The part of the full size that fits, 1 where nothing had to give way. */
  readonly fit: number;
}

/**
 * Makes the words of a box of fixed height as large as fit into it, from full size down to a part of it.
 *
 * The box's type size has to hang on the property `--fit`, and its measures on its type size. Whatever is drawn anew is fitted anew.
 *
 * @param smallest the part of the full size below which nothing can be read
 */
export function useFit(smallest: number): Fit {
  const ref = useRef<HTMLDivElement>(null);
  const [found, setFound] = useState({ fit: 1, isTooLong: false });

  function fit() {
    const box = ref.current;
    if (box === null) return;
    const isOver = (size: number) => {
      box.style.setProperty('--fit', String(size));
      return box.scrollHeight > box.clientHeight;
    };
    let size = 1;
    while (isOver(size) && size > smallest) size = Math.max(smallest, size - step);
    const isTooLong = box.scrollHeight > box.clientHeight;
    setFound((last) => (last.fit === size && last.isTooLong === isTooLong ? last : { fit: size, isTooLong }));
  }

  useLayoutEffect(fit);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the letters have come
  useEffect(() => {
    void document.fonts?.ready.then(fit);
  }, []);
  return { ref, ...found };
}
