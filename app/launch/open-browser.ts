import { spawn } from 'node:child_process';

/**
 * Opens a file in the usual browser, if there is one; says nothing if there is none. Never an address with a token in
 * it: other users of this computer can read command lines.
 */
export function openBrowser(path: string): void {
  const [command, ...args] = openerFor(process.platform, path);
  if (!command) return;
  const opener = spawn(command, args, { stdio: 'ignore', detached: true });
  opener.on('error', () => {
    // No browser to open: the address has been printed.
  });
  opener.unref();
}

function openerFor(platform: NodeJS.Platform, path: string): string[] {
  if (platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler', path];
  if (platform === 'darwin') return ['open', path];
  return hasDisplay() ? ['xdg-open', path] : [];
}

/** Whether a window could be shown at all. */
export function hasDisplay(env: NodeJS.ProcessEnv = process.env): boolean {
  if (process.platform === 'win32' || process.platform === 'darwin') return true;
  return Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
}
