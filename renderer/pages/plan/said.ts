/** A sentence about one place of the plan. */
export interface Said {
  /** The place, as a path with dots: levels.1.value. */
  readonly at: string;
  /** `gap`: not said yet, shown once saving was tried. `fault`: can't be read. `problem`: read, but it can't work. */
  readonly kind: 'gap' | 'fault' | 'problem';
  readonly message: string;
  /** The problem's code, where it is one. */
  readonly code?: string;
}

export function gap(at: string, message: string): Said {
  return { at, kind: 'gap', message };
}

export function fault(at: string, message: string): Said {
  return { at, kind: 'fault', message };
}
