import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserWindow, Rectangle } from 'electron';
import { z } from 'zod';
import type { ElectronApi } from './electron-api.ts';

const FILE = 'window.json';
/** A window is brought back where it was only if at least this much of it would be seen, in points each way. */
const SEEN = 100;

const windowState = z.strictObject({
  x: z.int(),
  y: z.int(),
  width: z.int().min(640).max(20_000),
  height: z.int().min(480).max(20_000),
  maximized: z.boolean(),
});
type WindowState = z.infer<typeof windowState>;

/** Where the window was when it was last closed; null if that is not known or lies on no screen now. */
export function readWindowState({ screen }: ElectronApi, folder: string): WindowState | null {
  try {
    const state = windowState.parse(JSON.parse(readFileSync(join(folder, FILE), 'utf8')));
    const { workArea } = screen.getDisplayMatching(state);
    return overlap(state, workArea) ? state : null;
  } catch {
    return null;
  }
}

function overlap(window: Rectangle, area: Rectangle): boolean {
  const wide = Math.min(window.x + window.width, area.x + area.width) - Math.max(window.x, area.x);
  const high = Math.min(window.y + window.height, area.y + area.height) - Math.max(window.y, area.y);
  return wide >= SEEN && high >= SEEN;
}

/** Remembers where the window is. Not worth a complaint if it cannot be written. */
export function keepWindowState(window: BrowserWindow, folder: string): void {
  try {
    const state: WindowState = { ...window.getNormalBounds(), maximized: window.isMaximized() };
    writeFileSync(join(folder, FILE), JSON.stringify(state), { mode: 0o600 });
  } catch {
    // The window opens at its usual size next time.
  }
}
