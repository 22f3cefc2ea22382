import type * as Electron from 'electron';

/**
 * The few parts of Electron that the desktop shell uses. The shell takes them as an argument, so that its real code
 * also runs against a typed stand-in where Electron's program file cannot be had.
 */
export type ElectronApi = Pick<
  typeof Electron,
  'app' | 'BrowserWindow' | 'dialog' | 'ipcMain' | 'Menu' | 'protocol' | 'screen' | 'session'
> &
  Partial<Pick<typeof Electron, 'safeStorage'>>;

/** The page's own origin in the desktop shell. */
export const PAGE_SCHEME = 'app';
const PAGE_HOST = 'kneelwright';
export const PAGE_HOME = `${PAGE_SCHEME}://${PAGE_HOST}/`;

/** The two channels between page and program. The page never sees their names. */
export const CALL_CHANNEL = 'kneelwright:call';
export const MENU_CHANNEL = 'kneelwright:menu';

/** Whether an address is the page's own. Compared by its parts: a custom scheme has no origin as the web defines it. */
export function isOwnPage(address: string): boolean {
  const url = URL.parse(address);
  return url !== null && url.protocol === `${PAGE_SCHEME}:` && url.host === PAGE_HOST;
}
