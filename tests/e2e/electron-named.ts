/** The stand-in for Electron under Electron's own names, for the built program to import. */
import { join } from 'node:path';
import { electronStandIn } from '../app/shells/electron-stand-in.ts';

export const standIn = electronStandIn(join(import.meta.dirname, '../..'));
export const { app, BrowserWindow, dialog, ipcMain, Menu, protocol, screen, session } = standIn.electron;
