import { execFileSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { closeStore } from '../../../app/store/open-store.ts';
import { addPhoto, PHOTO_BYTES, PHOTOS_OF_A_BOAT } from '../../../app/store/photos.ts';
import { boats } from '../../../app/store/roster.ts';
import { inventedBoat } from '../invented.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

const CHILD = join(import.meta.dirname, 'photos-child.ts');
const MB = 1024 * 1024;
/** Photographs of 4 MB each, the largest: 320 MB in all. */
const PHOTOS = 80;
const FEW = 4;
/**
 * The C library keeps freed pieces of memory that are as large as a photograph for itself, in each thread, unless it is told
 * to give them back: then a process has what it uses.
 */
const GIVE_BACK = { MALLOC_MMAP_THRESHOLD_: '131072', MALLOC_ARENA_MAX: '2' };

/** Begins as a JPEG does; the rest does not compress, as the rest of a picture does not. */
function picture(): Uint8Array {
  const bytes = randomBytes(PHOTO_BYTES);
  bytes.set([0xff, 0xd8, 0xff, 0xe0]);
  return bytes;
}

/** Brings so many photographs back from a journal, exports them and imports them elsewhere; gives the memory of that process at most, bytes. */
function memoryWith(photos: number): number {
  const store = temporaryStore(temporaryFolder());
  for (let i = 0, boatId = ''; i < photos; i++) {
    if (i % PHOTOS_OF_A_BOAT === 0) boatId = boats.save(store, inventedBoat(`Boat ${i}`)).id;
    expect(addPhoto(store, { boatId, caption: `${i}`, bytes: picture() })).toHaveProperty('id');
  }
  const { folder } = store;
  closeStore(store);
  const said = execFileSync(process.execPath, [CHILD, folder, temporaryFolder()], {
    encoding: 'utf8',
    env: { ...process.env, ...GIVE_BACK },
  });
  const child = JSON.parse(said.trim().split('\n').at(-1)!) as Record<string, number>;
  expect(child).toMatchObject({ back: photos, photos, leftBehind: false });
  expect(child.size).toBeGreaterThan(photos * 4 * MB);
  return child.bytes!;
}

describe('a store with 320 MB of photographs', () => {
  it('comes back from its journal, is backed up and exported, and what it exports is imported, without being in memory as a whole', () => {
    const [few, many] = [memoryWith(FEW), memoryWith(PHOTOS)];
    console.log(`${FEW} photographs ${Math.round(few / MB)} MB, ${PHOTOS} ${Math.round(many / MB)} MB`);
    // The collector's moments alone move each by some 40 MB. Memory that held them once would be 320 MB more.
    expect(many - few).toBeLessThan((PHOTOS * PHOTO_BYTES) / 2);
  });
});
