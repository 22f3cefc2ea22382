import { contextBridge, type IpcRendererEvent, ipcRenderer } from 'electron';
import type { Bridge, MenuCommand } from '../contract/bridge.ts';
import { CALL_CHANNEL, MENU_CHANNEL } from './electron-api.ts';
import { createMenuRelay } from './menu-relay.ts';

const menu = createMenuRelay();
ipcRenderer.on(MENU_CHANNEL, (_event: IpcRendererEvent, command: MenuCommand) => menu.heard(command));

/** All that a page gets of the program: two named functions. What passes through them is checked on the other side. */
const bridge: Bridge = {
  call: (name, input) => ipcRenderer.invoke(CALL_CHANNEL, name, input),
  onMenu: (listener) => menu.listen(listener),
};

contextBridge.exposeInMainWorld('kneelwright', bridge);
