import { describe, expect, it } from 'vitest';
import { takeBackup } from '../../../app/store/backups.ts';
import { eraseEverywhere } from '../../../app/store/erase-everywhere.ts';
import type { Incoming } from '../../../app/store/incoming.ts';
import { mergeIn } from '../../../app/store/merge.ts';
import {
  addPhoto,
  listPhotos,
  openPhoto,
  photosOfAthlete,
  removePhoto,
  studyPhoto,
} from '../../../app/store/photos.ts';
import { readIncomingBoats } from '../../../app/store/read-incoming.ts';
import { restoreBackup } from '../../../app/store/restore.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { photoStudySchema } from '../../../core/photograph/photo-study-schema.ts';
import { inventedAthlete, inventedBoat, inventedPicture } from '../invented.ts';
import { temporaryStore } from '../temporary.ts';

const study = photoStudySchema.parse({
  seat: 0,
  moment: 'ready',
  image: { width: 2048, height: 1536 },
  boat: { bow: { u: 1900, v: 700 } },
  joints: { midHip: { u: 1000, v: 620.5 } },
});

function pictured() {
  const store = temporaryStore();
  const { id: boatId } = boats.save(store, inventedBoat());
  const { id: athleteId } = athletes.save(store, inventedAthlete('Ottilie Quarrenbeck'));
  const fitId = crypto.randomUUID();
  const photo = addPhoto(store, { boatId, caption: '', bytes: inventedPicture(), athleteId, fitId, study });
  if (typeof photo === 'string') throw new Error(photo);
  return { store, boatId, athleteId, fitId, photo };
}

/** Everything of a store as another one takes it in. */
function itemsOf({ db }: Store): Incoming[] {
  return [...readIncomingBoats(db)].flatMap((boat): Incoming[] => [
    { kind: 'boat', item: boat },
    ...boat.photos.map(
      (photo): Incoming => ({
        kind: 'photo',
        item: { ...photo, boatId: boat.id, bytes: openPhoto({ db }, photo.id)!.bytes },
      }),
    ),
  ]);
}

describe('photographs of athletes', () => {
  it('are kept with their marks, beside those of the boat alone', () => {
    const { store, boatId, athleteId, fitId, photo } = pictured();
    expect(photosOfAthlete(store, athleteId)).toEqual([photo]);
    expect(photo).toMatchObject({ athleteId, fitId, study });
    expect(listPhotos(store, boatId)).toEqual([]);
    const confirmed = {
      ...study,
      confirmed: true,
      result: { angles: { trunkPitch: { value: 0.2, sd: 0.02 } } },
    };
    expect(studyPhoto(store, photo.id, confirmed)).toEqual({ ...photo, study: confirmed });
    expect(removePhoto(store, photo.id)).toBe(true);
    expect(photosOfAthlete(store, athleteId)).toEqual([]);
  });

  it('merge between two laptops: marks set on one come to the other', () => {
    const { store, athleteId, photo } = pictured();
    const other = temporaryStore();
    athletes.save(other, { ...inventedAthlete('Ottilie Quarrenbeck'), id: athleteId });
    mergeIn(other, itemsOf(store));
    expect(photosOfAthlete(other, athleteId)[0]?.study).toEqual(study);
    const marked = { ...study, joints: { ...study.joints, neck: { u: 1010, v: 300 } } };
    studyPhoto(other, photo.id, marked);
    mergeIn(store, itemsOf(other));
    expect(photosOfAthlete(store, athleteId)[0]?.study).toEqual(marked);
  });

  it('go with their athlete, from the store and from its backups, and do not come back', async () => {
    const { store, boatId, athleteId, photo } = pictured();
    const items = itemsOf(store);
    const backup = await takeBackup(store, 'asked');
    eraseEverywhere(store, { id: athleteId, name: 'Ottilie Quarrenbeck' });
    expect(openPhoto(store, photo.id)).toBeNull();
    mergeIn(store, items);
    expect(openPhoto(store, photo.id)).toBeNull();
    restoreBackup(store, { name: backup.name, how: 'bring-back' });
    expect(openPhoto(store, photo.id)).toBeNull();
    expect(boats.get(store, boatId)).not.toBeNull();
  });

  it('leave photographs of boats as they were', () => {
    const store = temporaryStore();
    const { id: boatId } = boats.save(store, inventedBoat());
    addPhoto(store, { boatId, caption: 'Port side', bytes: inventedPicture() });
    const [photo] = listPhotos(store, boatId);
    expect(photo).not.toHaveProperty('study');
    expect(photo).not.toHaveProperty('athleteId');
  });
});
