import { describe, expect, it } from 'vitest';
import { takeBackup } from '../../../app/store/backups.ts';
import { eraseEverywhere } from '../../../app/store/erase-everywhere.ts';
import { listMeasurings, saveMeasuring } from '../../../app/store/measurings.ts';
import { closeStore } from '../../../app/store/open-store.ts';
import {
  addPhoto,
  describePhoto,
  listPhotos,
  openPhoto,
  PHOTO_BYTES,
  PHOTOS_OF_A_BOAT,
  pictureMime,
  removePhoto,
} from '../../../app/store/photos.ts';
import { recoverStore } from '../../../app/store/recover.ts';
import { restoreBackup } from '../../../app/store/restore.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { inventedAthlete, inventedBoat, inventedPicture } from '../invented.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

function boatWithPhoto(caption = 'Port side', folder = temporaryFolder()) {
  const store = temporaryStore(folder);
  const { id: boatId } = boats.save(store, inventedBoat());
  const photo = addPhoto(store, { boatId, caption, bytes: inventedPicture() });
  if (typeof photo === 'string') throw new Error(photo);
  return { store, boatId, photo };
}

describe('photographs of a boat', () => {
  it('are kept byte for byte, described anew, and removed', () => {
    const { store, boatId, photo } = boatWithPhoto();
    expect(listPhotos(store, boatId)).toEqual([photo]);
    expect(photo).toMatchObject({ mime: 'image/png', bytes: inventedPicture().length, caption: 'Port side' });
    expect(openPhoto(store, photo.id)?.bytes.equals(inventedPicture())).toBe(true);
    expect(describePhoto(store, photo.id, 'Starboard')).toEqual({ ...photo, caption: 'Starboard' });
    expect(removePhoto(store, photo.id)).toBe(true);
    expect(removePhoto(store, photo.id)).toBe(false);
    expect(openPhoto(store, photo.id)).toBeNull();
  });

  it('are known by their own first bytes, whatever a file is called', () => {
    const bytes = (...first: number[]) => Uint8Array.from([...first, ...new Array(20).fill(0)]);
    expect(pictureMime(inventedPicture())).toBe('image/png');
    expect(pictureMime(bytes(0xff, 0xd8, 0xff, 0xe0))).toBe('image/jpeg');
    expect(pictureMime(Buffer.from('RIFF____WEBPVP8 '))).toBe('image/webp');
    expect(pictureMime(Buffer.from('RIFF____WAVEfmt '))).toBeNull();
    expect(pictureMime(Buffer.from('<svg onload="alert(1)">'))).toBeNull();
    expect(pictureMime(new Uint8Array())).toBeNull();
  });

  it('are refused with a reason, and then nothing is kept', () => {
    const { store, boatId } = boatWithPhoto();
    const large = Buffer.concat([inventedPicture(), Buffer.alloc(PHOTO_BYTES)]);
    expect(addPhoto(store, { boatId, caption: '', bytes: large })).toBe('too-large');
    expect(addPhoto(store, { boatId, caption: '', bytes: Buffer.from('GIF89a') })).toBe('no-picture');
    const nowhere = crypto.randomUUID();
    expect(addPhoto(store, { boatId: nowhere, caption: '', bytes: inventedPicture() })).toBe('no-boat');
    for (let i = 1; i < PHOTOS_OF_A_BOAT; i++) {
      addPhoto(store, { boatId, caption: String(i), bytes: inventedPicture() });
    }
    expect(addPhoto(store, { boatId, caption: '', bytes: inventedPicture() })).toBe('too-many');
    expect(listPhotos(store, boatId)).toHaveLength(PHOTOS_OF_A_BOAT);
  });

  it('come back from a backup', async () => {
    const { store, boatId, photo } = boatWithPhoto();
    const backup = await takeBackup(store, 'asked');
    removePhoto(store, photo.id);
    restoreBackup(store, { name: backup.name, how: 'bring-back' });
    expect(listPhotos(store, boatId)).toEqual([photo]);
    removePhoto(store, photo.id);
    restoreBackup(store, { name: backup.name, how: 'replace' });
    expect(openPhoto(store, photo.id)?.bytes.equals(inventedPicture())).toBe(true);
  });

  it('lose the name of an athlete who is erased', () => {
    const { store, boatId } = boatWithPhoto('Ottilie Quarrenbeck on the jetty');
    const { id } = athletes.save(store, inventedAthlete('Ottilie Quarrenbeck'));
    eraseEverywhere(store, { id, name: 'Ottilie Quarrenbeck' });
    expect(listPhotos(store, boatId)[0]?.caption).toBe('(erased) on the jetty');
  });

  it('and measurings are saved out of a store that is set aside as damaged', () => {
    const folder = temporaryFolder();
    const { store, boatId, photo } = boatWithPhoto('Port side', folder);
    const { id } = athletes.save(store, inventedAthlete());
    saveMeasuring(store, id, { takenOn: '2024-04-01', statureM: 1.5, massKg: null, tape: {} });
    const measured = listMeasurings(store, id);
    closeStore(store);
    const recovered = recoverStore(folder);
    if (recovered.kind !== 'recovered') throw new Error(recovered.refusal.code);
    const { store: saved, recovery } = recovered;
    expect(recovery).toMatchObject({ unreadable: 0, brokenTables: [] });
    expect(listPhotos(saved, boatId)).toEqual([photo]);
    expect(openPhoto(saved, photo.id)?.bytes.equals(inventedPicture())).toBe(true);
    expect(listMeasurings(saved, id)).toEqual(measured);
    closeStore(saved);
  });
});
