import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { atomicWrite } from '../shell/atomic-write.ts';
import type { Secrets } from '../shell/shell.ts';
import type { LibraryAddress } from './address.ts';
import { addressShape } from './invitation.ts';

const LOGIN_FILE = 'library-login.json';
const kept = z.strictObject({
  /** Encrypted by the system, or as it is: then only the file's mode guards it. */
  how: z.enum(['system', 'file']),
  text: z.string().max(60_000),
});

/** Keeps an address with its password: encrypted by the system where it can, in any case for this person alone to read. */
export function keepLogin(folder: string, address: LibraryAddress, secrets: Secrets | undefined): void {
  const text = JSON.stringify(address);
  const what = secrets
    ? { how: 'system', text: Buffer.from(secrets.seal(text)).toString('base64') }
    : { how: 'file', text };
  atomicWrite(join(folder, LOGIN_FILE), Buffer.from(JSON.stringify(what)));
}

/** The address that was kept; null if there is none, or it does not read any more. */
export function readLogin(folder: string, secrets: Secrets | undefined): LibraryAddress | null {
  const path = join(folder, LOGIN_FILE);
  if (!existsSync(path)) return null;
  try {
    const { how, text } = kept.parse(JSON.parse(readFileSync(path, 'utf8')));
    if (how === 'system' && !secrets) return null;
    const plain = how === 'system' ? secrets!.open(Buffer.from(text, 'base64')) : text;
    const { ca, ...rest } = addressShape.parse(JSON.parse(plain));
    return ca === undefined ? rest : { ...rest, ca };
  } catch {
    return null;
  }
}

export function forgetLogin(folder: string): void {
  rmSync(join(folder, LOGIN_FILE), { force: true });
}
