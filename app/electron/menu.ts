import type { MenuItemConstructorOptions } from 'electron';
import type { MenuCommand } from '../contract/bridge.ts';
import type { ElectronApi } from './electron-api.ts';

/** Sets the native menu. `choose` is told what was chosen; text editing and windows are the system's own business. */
export function setMenu({ Menu }: ElectronApi, choose: (command: MenuCommand) => void): void {
  const item = (label: string, command: MenuCommand, accelerator?: string): MenuItemConstructorOptions => ({
    label,
    ...(accelerator ? { accelerator } : {}),
    click: () => choose(command),
  });
  const line: MenuItemConstructorOptions = { type: 'separator' };
  const template: MenuItemConstructorOptions[] = [
    ...(process.platform === 'darwin' ? [{ role: 'appMenu' } as const] : []),
    {
      label: 'Fit',
      submenu: [
        item('New fit', 'new-fit', 'CmdOrCtrl+N'),
        item('Roster and boats', 'open-roster', 'CmdOrCtrl+O'),
        item('Keep as a revision', 'save-revision', 'CmdOrCtrl+S'),
        line,
        item('Print', 'print', 'CmdOrCtrl+P'),
        line,
        item('Export everything', 'export-everything'),
        item('Import a bundle', 'import-bundle'),
        line,
        { role: 'quit' },
      ],
    },
    {
      label: 'Edit',
      submenu: [
        item('Undo', 'undo', 'CmdOrCtrl+Z'),
        item('Redo', 'redo', 'CmdOrCtrl+Shift+Z'),
        line,
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    {
      label: 'View',
      submenu: [{ role: 'togglefullscreen' }, { role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }],
    },
    { label: 'Help', submenu: [item('How to use the bench', 'show-help', 'F1')] },
  ];
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
}
