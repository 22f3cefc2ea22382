import { contextBridge, type IpcRendererEvent, ipcRenderer } from 'electron';
import type { Bridge, MenuCommand } from '../contract/bridge.ts';
import { CALL_CHANNEL, MENU_CHANNEL } from './electron-api.ts';

/** All that a page gets of the program: two named functions. What passes through them is checked on the other side. */
const bridge: Bridge = {
  call: (name, input) => ipcRenderer.invoke(CALL_CHANNEL, name, input),
  onMenu(listener) {
    const heard = (_event: IpcRendererEvent, command: MenuCommand) => listener(command);
    ipcRenderer.on(MENU_CHANNEL, heard);
    return () => ipcRenderer.off(MENU_CHANNEL, heard);
  },
};

contextBridge.exposeInMainWorld('kneelwright', bridge);
