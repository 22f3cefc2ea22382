import type { MenuItemConstructorOptions } from 'electron';
import type { MenuCommand } from '../contract/bridge.ts';
import { say } from '../shell/say.ts';
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
      label: say('term.fit'),
      submenu: [
        item(say('fits.new'), 'new-fit', 'CmdOrCtrl+N'),
        item(say('menu.athletes'), 'open-roster', 'CmdOrCtrl+O'),
        item(say('revisions.save'), 'save-revision', 'CmdOrCtrl+S'),
        line,
        item(say('hull.print'), 'print', 'CmdOrCtrl+P'),
        line,
        item(say('menu.export'), 'export-everything'),
        item(say('menu.import'), 'import-bundle'),
        line,
        { role: 'quit' },
      ],
    },
    {
      label: say('menu.edit'),
      submenu: [
        item(say('bench.undo'), 'undo', 'CmdOrCtrl+Z'),
        item(say('bench.redo'), 'redo', 'CmdOrCtrl+Shift+Z'),
        line,
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    {
      label: say('menu.view'),
      submenu: [{ role: 'togglefullscreen' }, { role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }],
    },
    { label: say('menu.help'), submenu: [item(say('help.title'), 'show-help', 'F1')] },
  ];
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
}
