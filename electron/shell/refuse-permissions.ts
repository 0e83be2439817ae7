import type { Session } from 'electron';
import { isPageAddress } from '#hosts/ipc/page-address.ts';

/** Copying a chart writes to the clipboard; nothing else is needed, and reading it is not. */
const granted = 'clipboard-sanitized-write';

/**
 * Refuses every permission a page can ask for, except writing to the clipboard from our own page's main frame.
 *
 * Electron grants everything where no handler says otherwise.
 */
export function refusePermissions(
  session: Pick<
    Session,
    | 'setPermissionRequestHandler'
    | 'setPermissionCheckHandler'
    | 'setDevicePermissionHandler'
    | 'setDisplayMediaRequestHandler'
    | 'setBluetoothPairingHandler'
  >,
): void {
  session.setPermissionRequestHandler((_page, permission, answer, details) => {
    answer(permission === granted && details.isMainFrame && isPageAddress(details.requestingUrl));
  });
  session.setPermissionCheckHandler(
    (_page, permission, origin, details) => permission === granted && details.isMainFrame && isPageAddress(origin),
  );
  session.setDevicePermissionHandler(() => false);
  session.setDisplayMediaRequestHandler((_request, answer) => answer(null));
  session.setBluetoothPairingHandler((_details, answer) => answer({ confirmed: false }));
}
