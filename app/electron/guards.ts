import type { WebContents } from 'electron';
import { type ElectronApi, isOwnPage } from './electron-api.ts';

/** Denies a page every permission except full screen, and every request that is not for the page's own files. */
export function guardSession({ session }: ElectronApi): void {
  const own = session.defaultSession;
  own.setPermissionRequestHandler((_contents, permission, decide) => decide(permission === 'fullscreen'));
  own.setPermissionCheckHandler((_contents, permission) => permission === 'fullscreen');
  own.setDevicePermissionHandler(() => false);
  own.webRequest.onBeforeRequest((request, decide) => decide({ cancel: !isAllowedRequest(request.url) }));
}

/** Addresses made inside the page itself (a picture being shown, a file being offered) are its own as well. */
function isAllowedRequest(address: string): boolean {
  return isOwnPage(address) || /^(blob:|data:|devtools:)/.test(address);
}

/** Keeps a window on its own page: no navigation elsewhere, no second window, no embedded view. */
export function guardContents(contents: WebContents): void {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  contents.on('will-navigate', (event) => {
    if (!isOwnPage(event.url)) event.preventDefault();
  });
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
}
