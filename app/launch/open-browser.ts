import { spawn } from 'node:child_process';

/** Opens an address in the usual browser, if there is one; says nothing if there is none. */
export function openBrowser(address: string): void {
  const [command, ...args] = openerFor(process.platform, address);
  if (!command) return;
  const opener = spawn(command, args, { stdio: 'ignore', detached: true });
  opener.on('error', () => {
    // No browser to open: the address has been printed.
  });
  opener.unref();
}

function openerFor(platform: NodeJS.Platform, address: string): string[] {
  if (platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler', address];
  if (platform === 'darwin') return ['open', address];
  return hasDisplay() ? ['xdg-open', address] : [];
}

/** Whether a window could be shown at all. */
export function hasDisplay(env: NodeJS.ProcessEnv = process.env): boolean {
  if (process.platform === 'win32' || process.platform === 'darwin') return true;
  return Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
}
