import { closeSync, openSync, readSync } from 'node:fs';

/** How an encrypted file begins: the age format, age-encryption.org/v1. Any program for it opens a bundle too. */
const BEGINNING = 'age-encryption.org/v1\n';
/** Added after the usual ending where a bundle is encrypted. */
export const ENCRYPTED_ENDING = 'age';

/** Thrown where a passphrase does not open a file. */
export class WrongPassphrase extends Error {}
/** Thrown where a file is encrypted, and is damaged, cut off, or was encrypted for a key and not with a passphrase. */
export class CannotDecrypt extends Error {}

/** Whether a file is encrypted, by how it begins. */
export function isEncrypted(path: string): boolean {
  const begins = Buffer.alloc(BEGINNING.length);
  const handle = openSync(path, 'r');
  try {
    readSync(handle, begins, 0, begins.length, 0);
  } finally {
    closeSync(handle);
  }
  return begins.toString('latin1') === BEGINNING;
}

/**
 * Encrypts pieces one after the other with a passphrase. The key is made with scrypt, N = 2^`workFactor`: with the usual 18
 * each guess costs an attacker a second of a processor and 256 MB.
 */
export async function* encrypted(
  pieces: Iterator<Uint8Array>,
  passphrase: string,
  workFactor = 18,
): AsyncGenerator<Uint8Array> {
  const { Encrypter } = await loadCipher();
  const encrypter = new Encrypter();
  encrypter.setPassphrase(typed(passphrase));
  encrypter.setScryptWorkFactor(workFactor);
  yield* await encrypter.encrypt(streamOf(pieces));
}

/** Decrypts pieces one after the other. Throws `WrongPassphrase` before the first, or `CannotDecrypt` at any. */
export async function* decrypted(
  pieces: Iterator<Uint8Array>,
  passphrase: string,
): AsyncGenerator<Uint8Array> {
  const { Decrypter } = await loadCipher();
  const decrypter = new Decrypter();
  decrypter.addPassphrase(typed(passphrase));
  const opened = await decrypter.decrypt(streamOf(pieces)).catch((error: unknown) => {
    throw isNoMatch(error) ? new WrongPassphrase() : new CannotDecrypt();
  });
  const reader = opened.getReader();
  for (;;) {
    const step = await reader.read().catch(() => {
      throw new CannotDecrypt();
    });
    if (step.done) return;
    yield step.value;
  }
}

/** Loaded where a file is encrypted or decrypted: its curves take 70 ms, and every start and every job would pay for them. */
function loadCipher() {
  return import('age-encryption');
}

/** A keyboard may type an accented letter as one code point or as two; both must open the same file. */
function typed(passphrase: string): string {
  return passphrase.normalize('NFC');
}

function isNoMatch(error: unknown): boolean {
  return error instanceof Error && /no identity matched/.test(error.message);
}

/** A piece is taken only when one is wanted, so that no more than one waits in memory. */
function streamOf(pieces: Iterator<Uint8Array>): ReadableStream<Uint8Array> {
  return new ReadableStream(
    {
      pull(controller) {
        const step = pieces.next();
        if (step.done) controller.close();
        else controller.enqueue(step.value);
      },
    },
    { highWaterMark: 0 },
  );
}
