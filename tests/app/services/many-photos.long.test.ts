import { randomBytes } from 'node:crypto';
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import { openProgram } from '../../../app/services/open-program.ts';
import { addPhoto, PHOTO_BYTES, PHOTOS_OF_A_BOAT } from '../../../app/store/photos.ts';
import { boats } from '../../../app/store/roster.ts';
import { inventedBoat } from '../invented.ts';
import { temporaryFolder } from '../temporary.ts';

const ROOT = join(import.meta.dirname, '../../..');
const MB = 1024 * 1024;
/** Photographs of 4 MB each, the largest: 320 MB in all. */
const PHOTOS = 80;
const FEW = 4;

function opened() {
  const shell = createLoopbackShell(() => {});
  const program = openProgram({ root: ROOT, folder: temporaryFolder(), shell });
  if (program.kind === 'refused') throw new Error(program.sentence);
  const call = async (name: string, input: object) => {
    const result = await dispatch(program.program, name, input);
    if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
    return result.value as never as { href: string; handle: string; changes: { photos: { added: number } } };
  };
  return { ...program, shell, call };
}

/** Begins as a JPEG does; the rest does not compress, as the rest of a picture does not. */
function picture(): Uint8Array {
  const bytes = randomBytes(PHOTO_BYTES);
  bytes.set([0xff, 0xd8, 0xff, 0xe0]);
  return bytes;
}

/** Exports so many photographs from one store and imports them into another; gives the memory of the process at the end, bytes. */
async function brought(photos: number): Promise<number> {
  const from = opened();
  const { store } = from.program;
  for (let i = 0, boatId = ''; i < photos; i++) {
    if (i % PHOTOS_OF_A_BOAT === 0) boatId = boats.save(store, inventedBoat(`Boat ${i}`)).id;
    expect(addPhoto(store, { boatId, caption: `${i}`, bytes: picture() })).toHaveProperty('id');
  }
  const { href } = await from.call('bundle.export', {});
  const file = from.shell.fetch(href.split('/').at(-1)!)!;
  if (!('path' in file)) throw new Error('the bundle is in memory');
  expect(statSync(file.path).size).toBeGreaterThan(photos * 4 * MB);

  const into = opened();
  const { handle, changes } = await into.call('bundle.preview', { upload: into.shell.accept(file.path) });
  expect(changes.photos.added).toBe(photos);
  await into.call('bundle.import', { handle });
  const memory = process.memoryUsage().rss;
  const count = into.program.store.db.prepare('SELECT count(*) FROM boat_photos').pluck();
  expect(count.get()).toBe(photos);
  expect(existsSync(file.path)).toBe(false);
  from.close();
  into.close();
  return memory;
}

describe('a store with 320 MB of photographs', () => {
  it('is exported, and what it exports is imported, without either being in memory as a whole', async () => {
    // The threads alone, with the sources that they load, take what a few photographs take.
    const few = await brought(FEW);
    expect((await brought(PHOTOS)) - few).toBeLessThan(300 * MB);
  });
});
