import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ParsedInput } from '../contract/contract.ts';
import { DISPLAY_DEFAULTS, type DisplayRecord, readDisplay } from '../contract/display.ts';
import { chosenLanguage } from '../language/languages.ts';
import { speak } from '../language/spoken.ts';
import { atomicWrite } from '../shell/atomic-write.ts';
import { done, type Program } from './program.ts';

/**
 * A file of its own beside the store: what somebody likes to see is no club's data, so that a restored backup or a
 * bundle from another computer leaves it alone; and unlike the page's own storage it does not depend on the port.
 */
const DISPLAY_FILE = 'display.json';

/** How things are shown on this computer. A file that is missing or does not read is what it is at first. */
export function readDisplayFile({ store }: { readonly store: { readonly folder: string } }): DisplayRecord {
  try {
    return readDisplay(JSON.parse(readFileSync(join(store.folder, DISPLAY_FILE), 'utf8')));
  } catch {
    return DISPLAY_DEFAULTS;
  }
}

/** The system's languages, most wanted first: the computer's own, until a browser tells what it asks for. */
let systemLanguages: readonly string[] = [Intl.DateTimeFormat().resolvedOptions().locale];

/** The program speaks as chosen: menus, dialogs and errors; the system's language unless another was chosen. */
export async function speakAsChosen(at: Pick<Program, 'store'>): Promise<void> {
  await speak(chosenLanguage(readDisplayFile(at).language, systemLanguages));
}

/**
 * Where nothing is chosen the page speaks its browser's language; from now on the program does so too, whatever the terminal
 * speaks in which it was started. `accepted` is the browser's Accept-Language header (RFC 9110, 12.5.4).
 */
export async function speakAsBrowser(
  at: Pick<Program, 'store'>,
  accepted: string | undefined,
): Promise<void> {
  if (!accepted) return;
  systemLanguages = accepted.split(',').map((range) => range.split(';')[0]!.trim());
  await speakAsChosen(at);
}

/** Keeps it, whole or not at all. */
export function keepDisplay({ store }: Pick<Program, 'store'>, display: ParsedInput<'display.keep'>) {
  const text = `${JSON.stringify(display, null, 2)}\n`;
  atomicWrite(join(store.folder, DISPLAY_FILE), Buffer.from(text, 'utf8'));
  void speakAsChosen({ store });
  return done(display);
}
