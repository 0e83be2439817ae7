import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { app, ipcMain, Notification, protocol, session } from 'electron';
import { openDeskLine } from '#hosts/desk-line.ts';
import { carryDesk } from '#hosts/ipc/carry-desk.ts';
import { answerAsk } from '#shell/answer-ask.ts';
import { builtFiles } from '#shell/built-files.ts';
import { chooseKitchen } from '#shell/choose-kitchen.ts';
import { shareDataFolder } from '#shell/data-folders.ts';
import { dueNotifications } from '#shell/due-notifications.ts';
import { failToStart, sayAndEnd } from '#shell/fail-to-start.ts';
import { guardContents } from '#shell/guard-contents.ts';
import { kitchenFile } from '#shell/kitchen-file.ts';
import { loadPage, openKitchenWindow } from '#shell/kitchen-window.ts';
import { kitchensOf } from '#shell/kitchens.ts';
import { declarePageScheme, servePage } from '#shell/page-protocol.ts';
import { endWithLastWindow, quitAfterDesks } from '#shell/quit-after-desks.ts';
import { readLaunch } from '#shell/read-launch.ts';
import { recentKitchens } from '#shell/recent-kitchens.ts';
import { refuseCertificates } from '#shell/refuse-certificates.ts';
import { refuseNetwork } from '#shell/refuse-network.ts';
import { refusePermissions } from '#shell/refuse-permissions.ts';
import { isSoleInstance } from '#shell/sole-instance.ts';
import { tended } from '#shell/tended.ts';
import { speakAsAsked } from '#shell/window-language.ts';
import { windowMemory } from '#shell/window-memory.ts';
import { setMenu } from '#shell/window-menu.ts';

// The boot list: one line a concern, in the order in which they must come.

const files = builtFiles(import.meta.dirname);
const launch = readLaunch(process.argv.slice(1), process.cwd());
const isDevelopment = !app.isPackaged;

shareDataFolder(app, process.platform, process.env);
const recent = recentKitchens(join(app.getPath('userData'), 'recent.json'));
const memory = windowMemory(join(app.getPath('userData'), 'window.json'));
const logFile = join(app.getPath('userData'), 'workbench.log');
const kitchens = kitchensOf({
  carrier: carryDesk(
    ipcMain,
    speakAsAsked(() => showMenu()),
    (file) => existsSync(file) && open(file),
  ),
  openLine: (store) =>
    openDeskLine({
      worker: files.worker,
      store,
      log: logFile,
      onTended: tended,
      beside: (file) => open(file),
      choose: chooseKitchen,
    }),
  openWindow: (others) => openKitchenWindow({ preload: files.preload, memory, isDevelopment, others }),
  load: loadPage,
  opened({ store, window, line }) {
    dueNotifications(Notification, window, line);
    recent.add(store);
    app.addRecentDocument(store);
    showMenu();
  },
});
const showMenu = () => setMenu(kitchens, { recent, isDevelopment, platform: process.platform });
const open = (store: string | null) => kitchens.open(kitchenFile(app, store));
const openAgain = (store: string | null) => {
  if (store !== null || !kitchens.focus()) open(store);
};

function openWorkbench(store: string | null): void {
  app.enableSandbox();
  declarePageScheme(protocol);
  guardContents(app);
  refuseCertificates(app);
  quitAfterDesks(app, kitchens.close);
  endWithLastWindow(app, process.platform, () => open(null));
  // Never awaited at the top: Electron is ready only once this file has run to its end.
  void app
    .whenReady()
    .then(() => {
      refusePermissions(session.defaultSession);
      refuseNetwork(session.defaultSession.webRequest);
      servePage(session.defaultSession.protocol, files.page);
      showMenu();
      open(store);
    })
    .catch(failToStart);
}

if ('problem' in launch) sayAndEnd(launch.problem);
// Answered before Electron is ready: it needs no display.
else if (launch.ask !== null) app.exit(await answerAsk(launch.ask, kitchenFile(app, launch.store), files.worker));
else if (isSoleInstance(app, launch.store, openAgain)) openWorkbench(launch.store);
else app.exit(0);
