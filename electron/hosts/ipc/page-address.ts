/** The scheme under which the installed page is served to its window. */
export const pageScheme = 'app';

export const pageHost = 'sidejar';

/** Where the page's window opens. */
export const pageAddress = `${pageScheme}://${pageHost}/`;

/**
 * Says whether an address belongs to the page's own origin.
 *
 * Scheme and host are compared by hand: Node gives every scheme of one's own the origin "null".
 *
 * @param address any text; what is no address is not the page's
 * @example isPageAddress('app://sidejar/trials') // true
 */
export function isPageAddress(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const { protocol, host, username, password } = new URL(address);
  return protocol === `${pageScheme}:` && host === pageHost && username === '' && password === '';
}
