export interface Part {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
}

/** Put in by the build (vite.page.config.ts); a page that was not built has none. */
declare const __MADE_OF__: readonly Part[] | undefined;

export const madeOf: readonly Part[] = typeof __MADE_OF__ === 'undefined' ? [] : __MADE_OF__;
