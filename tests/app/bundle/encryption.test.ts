import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CannotDecrypt,
  decrypted,
  encrypted,
  isEncrypted,
  WrongPassphrase,
} from '../../../app/bundle/encryption.ts';
import { temporaryFolder } from '../temporary.ts';

const PASSPHRASE = 'four invented words of a test';
/** Cheap to try, so of use in tests only. */
const WORK_FACTOR = 2;
/** Pieces are encrypted in chunks of this size: the age format, section "Payload". */
const CHUNK = 64 * 1024;

/**
 * The text `made by another program`, encrypted by the reference implementation of the age format: age 1.1.1 as Debian
 * packages it, `age -p`, with the passphrase above. The other way round it was tried by hand: `age -d` opens a file made here.
 */
const BY_AGE = `YWdlLWVuY3J5cHRpb24ub3JnL3YxCi0+IHNjcnlwdCBBMXZ2YnNCUWlxZWRCSGo1eFBPSy9nIDE4CkVkbmZOSzZhaVpmN2E0bkNDZ2pmbDR5TWVk
QmR2ai94WmJpK1hDZmxXeUUKLS0tIFRkS3UxQU91S08rYldVRVJJdEFPNVo3S0FyOFpMaFlhZ1JEQjc1ekRZbDgKQguHa6MXDOOOHdOamdkFfB+QIJv/
w1rid+mpvnCxS1ZFJk43LaCrnXlIGHIVg/20oMjOcsPjxw==`;

async function whole(pieces: AsyncIterable<Uint8Array>): Promise<Buffer> {
  const all: Uint8Array[] = [];
  for await (const piece of pieces) all.push(piece);
  return Buffer.concat(all);
}

const lock = (bytes: Uint8Array, passphrase = PASSPHRASE) =>
  whole(encrypted([bytes].values(), passphrase, WORK_FACTOR));
const open = (bytes: Uint8Array, passphrase = PASSPHRASE) => whole(decrypted([bytes].values(), passphrase));

describe('a file encrypted with a passphrase', () => {
  it('opens a file of another program for the same format', async () => {
    const bytes = Buffer.from(BY_AGE, 'base64');
    expect((await open(bytes)).toString()).toBe('made by another program');
  });

  it('opens again, whatever its length and however it comes in pieces', async () => {
    for (const length of [0, 1, CHUNK - 1, CHUNK, CHUNK + 1, 3 * CHUNK + 17]) {
      const bytes = Buffer.alloc(length, 'a paddler kneels ');
      const halves = [bytes.subarray(0, length / 3), bytes.subarray(length / 3)];
      const locked = await whole(encrypted(halves.values(), PASSPHRASE, WORK_FACTOR));
      expect((await open(locked)).equals(bytes), `${length} bytes`).toBe(true);
      if (length > 20) expect(locked.includes('a paddler kneels')).toBe(false);
    }
  });

  it('says that a passphrase is wrong, before a byte comes out', async () => {
    const locked = await lock(Buffer.from('secret'));
    await expect(open(locked, 'another passphrase')).rejects.toBeInstanceOf(WrongPassphrase);
  });

  it('opens with the same letters, typed as one sign or as two', async () => {
    const locked = await lock(Buffer.from('secret'), 'erdő tűz kéz víz'.normalize('NFD'));
    expect((await open(locked, 'erdő tűz kéz víz'.normalize('NFC'))).toString()).toBe('secret');
  });

  it('never opens as anything else when a bit of it is turned or its end is missing', async () => {
    const bytes = Buffer.alloc(CHUNK + 100, 'x');
    const locked = await lock(bytes);
    await fc.assert(
      fc.asyncProperty(fc.nat(locked.length - 1), fc.integer({ min: 1, max: 255 }), async (at, turn) => {
        const turned = Buffer.from(locked);
        turned[at] = turned[at]! ^ turn;
        await expect(open(turned)).rejects.toSatisfy(isRefusal);
        await expect(open(locked.subarray(0, at))).rejects.toSatisfy(isRefusal);
      }),
      { numRuns: 25, seed: 17 },
    );
  });

  it('is told from a bundle that is not encrypted by how it begins', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'locked'), await lock(Buffer.from('x')));
    writeFileSync(join(folder, 'zip'), 'PK');
    writeFileSync(join(folder, 'empty'), '');
    expect(['locked', 'zip', 'empty'].map((name) => isEncrypted(join(folder, name)))).toEqual([
      true,
      false,
      false,
    ]);
  });
});

function isRefusal(error: unknown): boolean {
  return error instanceof WrongPassphrase || error instanceof CannotDecrypt;
}
