/** The three channels between a window and the main process: there are no others. */
export const channels = {
  ask: 'desk:ask',
  stop: 'desk:stop',
  event: 'desk:event',
} as const;
