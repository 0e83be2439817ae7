import { contextBridge, ipcRenderer, webUtils } from 'electron';
import { pageBridge } from '#hosts/ipc/page-bridge.ts';
import { bridgeName } from '#shared/carriage.ts';
import { handDroppedKitchens } from '#shell/dropped-kitchen.ts';
import { undoInText } from '#shell/undo-in-text.ts';

contextBridge.exposeInMainWorld(
  bridgeName,
  pageBridge(ipcRenderer, (event) => undoInText(event, document)),
);

handDroppedKitchens(window, ipcRenderer, webUtils);
