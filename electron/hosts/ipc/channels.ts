/** The four channels between a window and the main process: there are no others. */
export const channels = {
  ask: 'desk:ask',
  stop: 'desk:stop',
  event: 'desk:event',
  /** A kitchen's file was dropped on the window. */
  dropped: 'window:dropped',
} as const;
