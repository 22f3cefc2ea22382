import { copyFileSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { packedBytes } from '../../../app/bundle/packed.ts';
import { bundleItems } from '../../../app/bundle/read-bundle.ts';
import { takeBackup } from '../../../app/store/backups.ts';
import { FREE_TEXT_FIELDS } from '../../../app/store/clear-words.ts';
import { eraseEverywhere, finishErasures, previewErasure } from '../../../app/store/erase-everywhere.ts';
import { mergeIn } from '../../../app/store/merge.ts';
import { closeStore, STORE_FILE } from '../../../app/store/open-store.ts';
import { RECORD_SCHEMAS } from '../../../app/store/record-rows.ts';
import { restoreBackup } from '../../../app/store/restore.ts';
import { listRevisions } from '../../../app/store/revisions.ts';
import { athletes, boats, paddles } from '../../../app/store/roster.ts';
import type { Store } from '../../../app/store/store.ts';
import { bring, bundleOf, contentOf, meet } from '../exchange.ts';
import { temporaryStore } from '../temporary.ts';
import { FORMER, filesWith, fillWithPerson, GUARDIAN, marksOf, NAME } from './marked-person.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };

function remaining(store: Store, id: string): string[] {
  return marksOf(id).flatMap((mark) => filesWith(store.folder, mark).map((file) => `${mark} in ${file}`));
}

describe('erasing a person who stands in free text everywhere', () => {
  it('leaves no name, former name, date of birth or guardian in any byte of the folder', async () => {
    const store = temporaryStore();
    const { id, otherFit } = fillWithPerson(store);
    await takeBackup(store, 'daily');
    for (const mark of marksOf(id).slice(0, 3)) expect(filesWith(store.folder, mark)).not.toEqual([]);
    expect(eraseEverywhere(store, { id, name: NAME }).copiesLeft).toEqual([]);
    expect(paddles.list(store, page)[0]!.paddle).toMatchObject({
      name: "(erased)'s",
      note: 'bought by (erased)',
    });
    expect(listRevisions(store, otherFit)[0]).toMatchObject({
      name: 'as (erased)',
      reason: '(erased) liked it',
    });
    closeStore(store);
    expect(remaining(store, id)).toEqual([]);
  });

  it('names every place beforehand, and changes nothing by naming them', () => {
    const store = temporaryStore();
    const { id, otherAthlete, otherFit } = fillWithPerson(store);
    const before = store.db.serialize();
    const { words } = previewErasure(store, { id, name: NAME });
    expect(store.db.serialize().equals(before)).toBe(true);
    const said = words.map(({ kind, text }) => `${kind}: ${text}`);
    expect(said).toEqual(
      expect.arrayContaining([
        `athlete: as for ${NAME}`,
        `boat: Boat of ${FORMER}`,
        `paddle: ${NAME}'s`,
        `paddle: bought by ${GUARDIAN.toUpperCase()}`,
        `photo: ${NAME} in it, her mother ${GUARDIAN}`,
        `fit: like ${FORMER}`,
        `fit: as ${FORMER}`,
        `fit: ${NAME} liked it`,
      ]),
    );
    expect(words.every(({ full }) => full)).toBe(true);
    expect(words.find(({ kind }) => kind === 'athlete')!.id).toBe(otherAthlete);
    expect(words.filter(({ kind }) => kind === 'fit').every(({ id: fit }) => fit === otherFit)).toBe(true);
  });

  it('leaves words as they are when asked to, and a part of a name that may be somebody else', () => {
    const store = temporaryStore();
    const { id } = fillWithPerson(store);
    const { id: second } = paddles.save(store, {
      ...paddles.list(store, page)[0]!.paddle,
      id: undefined,
      name: 'Ottilie two',
      note: '',
    });
    expect(
      previewErasure(store, { id, name: NAME }).words.find(({ text }) => text === 'Ottilie two'),
    ).toMatchObject({ full: false });
    eraseEverywhere(store, { id, name: NAME }, 'none');
    expect(boats.list(store, page)[0]!.boat.name).toBe(`Boat of ${FORMER}`);
    expect(paddles.get(store, second)!.paddle.name).toBe('Ottilie two');
  });

  it('looks into every field of a document in which people write freely', () => {
    const codes = ['quantity', 'format'];
    const free = new Set<string>();
    const walk = (schema: z.ZodType, name: string): void => {
      const def = schema._zod.def as unknown as Record<string, unknown> & { type: string };
      if (def.type === 'string' && !def.format && !codes.includes(name)) free.add(name);
      for (const inner of [def.innerType, def.element, def.valueType, def.in])
        if (inner) walk(inner as z.ZodType, name);
      for (const option of (def.options ?? []) as z.ZodType[]) walk(option, name);
      for (const [key, inner] of Object.entries((def.shape ?? {}) as Record<string, z.ZodType>))
        walk(inner, key);
    };
    for (const schema of Object.values(RECORD_SCHEMAS)) walk(schema, '');
    // Who gave somebody else's consent is that one's own.
    expect([...free].filter((name) => name !== 'by').sort()).toEqual([...FREE_TEXT_FIELDS].sort());
  });

  it('sweeps whole stores and half copies that killed work has left, at the start and before erasing', () => {
    const store = temporaryStore();
    const { id } = fillWithPerson(store);
    const leave = () => {
      store.db.pragma('wal_checkpoint(TRUNCATE)');
      const workplace = join(store.folder, 'restoring-aB3xYz');
      mkdirSync(workplace, { recursive: true });
      mkdirSync(join(store.folder, 'backups'), { recursive: true });
      const left = [join(workplace, STORE_FILE), join(store.folder, 'backups', 'kneelwright-x.db.part')];
      for (const path of left) copyFileSync(store.file, path);
      for (const path of [`${left[1]}-wal`, join(store.folder, 'settings.json.part')])
        writeFileSync(path, NAME);
      return [...left, `${left[1]}-wal`];
    };
    const first = leave();
    finishErasures(store);
    for (const path of first) expect(existsSync(path)).toBe(false);
    leave();
    expect(eraseEverywhere(store, { id, name: NAME }).copiesLeft).toEqual([]);
    closeStore(store);
    expect(remaining(store, id)).toEqual([]);
  });
});

describe('whoever was erased', () => {
  it('does not come back with an older file, guardian and all; it is said', () => {
    const store = temporaryStore();
    const { id } = fillWithPerson(store);
    const older = bundleOf(store);
    eraseEverywhere(store, { id, name: NAME });
    const counts = mergeIn(store, bundleItems(packedBytes(older)));
    expect(counts.refusedErased).toBe(1);
    expect(athletes.get(store, id)).toBe(null);
    store.db.pragma('wal_checkpoint(TRUNCATE)');
    expect(remaining(store, id)).toEqual([]);
  });

  it.each(['photo', 'removed-photo'] as const)(
    'does not come back in a caption of a %s that waits for a decision',
    (kind) => {
      const store = temporaryStore();
      const { id } = fillWithPerson(store);
      const older = [...bundleItems(packedBytes(bundleOf(store)))].map((incoming) => {
        if (incoming.kind !== 'photo') return incoming;
        const write = { store: 'elsewhere', counter: 9, at: '2026-01-01' };
        const others = [{ ...write, value: JSON.stringify(`${NAME} at the dock`) }];
        const caption = { seen: { elsewhere: 9 }, writes: [write], others };
        const versions = { base: { ...caption, others: [] }, fields: { caption } };
        if (kind === 'photo') return { ...incoming, item: { ...incoming.item, versions } };
        return { kind, item: { id: incoming.item.id, versions } };
      });
      eraseEverywhere(store, { id, name: NAME });
      expect(older.some((one) => one.kind === kind)).toBe(true);
      mergeIn(store, older);
      store.db.pragma('wal_checkpoint(TRUNCATE)');
      expect(remaining(store, id)).toEqual([]);
    },
  );

  it('does not come to a third computer that knows only of the erasure', () => {
    const [a, b, c] = [temporaryStore(), temporaryStore(), temporaryStore()];
    const { id } = fillWithPerson(a);
    bring(b, a);
    eraseEverywhere(a, { id, name: NAME });
    bring(c, a);
    expect(bring(c, b).refusedErased).toBe(1);
    closeStore(c);
    expect(remaining(c, id)).toEqual([]);
  });

  it('goes from the other laptop at the next exchange, and both hold the same', () => {
    const [a, b] = [temporaryStore(), temporaryStore()];
    const { id } = fillWithPerson(a);
    bring(b, a);
    eraseEverywhere(a, { id, name: NAME });
    expect(bring(b, a).erasedHere).toBe(1);
    finishErasures(b);
    meet(a, b);
    expect(contentOf(b)).toEqual(contentOf(a));
    closeStore(b);
    expect(remaining(b, id)).toEqual([]);
  });

  it('stays so when an older backup is restored', async () => {
    const store = temporaryStore();
    const { id } = fillWithPerson(store);
    const { name } = await takeBackup(store, 'asked');
    eraseEverywhere(store, { id, name: NAME });
    restoreBackup(store, { name, how: 'replace' });
    finishErasures(store);
    expect(athletes.get(store, id)).toBe(null);
    const older = temporaryStore();
    expect(bring(older, store).refusedErased).toBe(0);
    expect(older.db.prepare('SELECT count(*) FROM erased_people').pluck().get()).toBe(1);
  });
});
