import { type App, BrowserWindow, type WebContents } from 'electron';
import { isPageAddress } from '#hosts/ipc/page-address.ts';
import { openOutside } from './open-outside.ts';

function offerOutside(address: string, page: WebContents): void {
  // A browser that can't be started is the system's to report: the window itself is unharmed.
  void openOutside(address, BrowserWindow.fromWebContents(page)).catch(() => undefined);
}

/** Keeps one window's contents on the page: no leaving, no frames of others, no new windows, no webview. */
export function guardPage(page: WebContents): void {
  page.on('will-frame-navigate', (event) => {
    if (event.isMainFrame && isPageAddress(event.url)) return;
    event.preventDefault();
    if (event.isMainFrame) offerOutside(event.url, page);
  });
  page.on('will-redirect', (event) => {
    if (!isPageAddress(event.url)) event.preventDefault();
  });
  page.on('will-attach-webview', (event) => event.preventDefault());
  page.setWindowOpenHandler(({ url }) => {
    offerOutside(url, page);
    return { action: 'deny' };
  });
}

/** Guards all contents there will ever be, whoever makes them. */
export function guardContents(app: Pick<App, 'on'>): void {
  app.on('web-contents-created', (_event, page) => guardPage(page));
}
