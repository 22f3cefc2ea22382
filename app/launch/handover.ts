import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';

/** A private file that lets the browser in, and how to be rid of it. */
export interface Handover {
  readonly path: string;
  remove(): void;
}

/**
 * Writes a file, readable by this user alone, that posts the one-time token to the server. So the token never stands on a
 * command line, where every user of this computer could read it.
 */
export function writeHandover(
  { action, token }: { action: string; token: string },
  place: string = handoverPlace(),
): Handover {
  // Made by `mkdtemp` with mode 0700.
  const folder = mkdtempSync(join(place, 'kneelwright-'));
  const path = join(folder, 'open-kneelwright.html');
  writeFileSync(path, pageThatPosts(action, token), { mode: 0o600 });
  return { path, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

function pageThatPosts(action: string, token: string): string {
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="referrer" content="no-referrer"><title>Kneelwright</title></head>
<body><form method="post" action="${action}"><input type="hidden" name="token" value="${token}"><button>Kneelwright</button></form>
<script>document.forms[0].submit()</script></body></html>
`;
}

/** Where such a file may lie: this user's own place for the time of a session, and one the browser can read. */
export function handoverPlace(
  env: NodeJS.ProcessEnv = process.env,
  browser: () => string = defaultBrowser,
): string {
  if (process.platform !== 'linux') return tmpdir();
  return (
    snapPlace(browser()) ??
    (env.XDG_RUNTIME_DIR && existsSync(env.XDG_RUNTIME_DIR) ? env.XDG_RUNTIME_DIR : tmpdir())
  );
}

/**
 * A browser from a snap sees neither `/tmp` nor hidden folders, but always its own folder. Its desktop entry is named
 * `SNAP_PROGRAM.desktop`. One from a Flatpak is given the very file that it is asked to open, wherever that lies.
 */
export function snapPlace(desktopEntry: string, home: string = homedir()): string | null {
  const [, snap] = /^([a-z0-9-]+)_[a-z0-9-]+\.desktop$/.exec(desktopEntry.trim()) ?? [];
  const place = snap && join(home, 'snap', snap, 'common');
  return place && existsSync(place) ? place : null;
}

/** The desktop entry of the program that opens pages; empty if that is not known. */
function defaultBrowser(): string {
  const asked = spawnSync('xdg-mime', ['query', 'default', 'text/html'], { encoding: 'utf8', timeout: 2000 });
  return asked.stdout ?? '';
}
