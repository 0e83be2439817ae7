// The least program with a window: serves one line of text to the same window that the workbench opens.
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { dataFolder } from '#hosts/default-store.ts';
import { freeProfile, openBrowserWindow } from '#scripts/browser-window.ts';
import { findBrowser } from '#scripts/find-browser.ts';

const browser = findBrowser();
if (browser === null) throw new Error('No browser is installed here.');
const server = createServer((_, response) => {
  response.setHeader('content-type', 'text/html');
  response.end('<!doctype html><title>Empty</title><p>Empty</p>');
});
server.listen(0, '127.0.0.1', () => {
  openBrowserWindow({
    browser,
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    profile: freeProfile(join(dataFolder(process.platform, process.env), 'window')),
    moreFlags: (process.env.SIDEJAR_WINDOW_FLAGS ?? '').split(' ').filter((flag) => flag !== ''),
  });
});
