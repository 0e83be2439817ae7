/** How near a tip comes to the window's edge and to its word, in px. */
const edge = 8;
const gap = 4;

interface Box {
  readonly left: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Where a tip stands in the window: at its word, above or below, and whole at every width.
 *
 * @param word what it belongs to; for a field its label, with the control's lower edge as `bottom`
 * @param prefers a field's tip stands above, so that what is typed stays seen
 */
export function tipPlace(
  word: Box,
  tip: { readonly width: number; readonly height: number },
  room: { readonly width: number; readonly height: number },
  prefers: 'above' | 'below',
): { readonly left: number; readonly top: number } {
  const above = word.top - gap - tip.height;
  const below = word.bottom + gap;
  const fitsAbove = above >= edge;
  const fitsBelow = below + tip.height <= room.height - edge;
  const isAbove = prefers === 'above' ? fitsAbove || !fitsBelow : fitsAbove && !fitsBelow;
  const top = isAbove ? Math.max(edge, above) : Math.min(below, room.height - edge - tip.height);
  return { left: Math.max(edge, Math.min(word.left, room.width - edge - tip.width)), top: Math.max(edge, top) };
}
