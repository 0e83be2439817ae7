import type { WebRequest } from 'electron';

const outside = new Set(['http:', 'https:', 'ws:', 'wss:', 'ftp:', 'file:']);

/** Says whether an address lies outside the program: on a network, or among the machine's files. */
export function isOutside(address: string): boolean {
  return !URL.canParse(address) || outside.has(new URL(address).protocol);
}

/** The page lives from its own files and its own desk: no request of a window leaves the program. */
export function refuseNetwork(webRequest: Pick<WebRequest, 'onBeforeRequest'>): void {
  webRequest.onBeforeRequest(({ url }, answer) => answer({ cancel: isOutside(url) }));
}
