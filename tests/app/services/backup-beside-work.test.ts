import { describe, expect, it } from 'vitest';
import { inventedFit } from '../invented.ts';
import { throughLoopback } from '../shells/through-loopback.ts';
import { value } from '../shells/way-in.ts';
import { temporaryFolder } from '../temporary.ts';

describe('a backup under way', () => {
  it('holds no edit up: the edit is kept before the backup has ended, and is in the store', async () => {
    const way = await throughLoopback(temporaryFolder());
    const { id } = value(await way.call('fits.create', { fit: inventedFit() }));
    for (let i = 0; i < 40; i++)
      value(await way.call('fits.create', { fit: inventedFit({ name: `F ${i}` }) }));
    const order: string[] = [];
    const backup = way.call('backups.take', {}).then((taken) => order.push(taken.ok ? 'backup' : 'refused'));
    const draft = way
      .call('drafts.save', { id, fit: inventedFit({ padAftM: 0.2 }) })
      .then((kept) => order.push(kept.ok ? 'draft' : 'refused'));
    await Promise.all([backup, draft]);
    expect(order).toEqual(['draft', 'backup']);
    expect(value(await way.call('fits.open', { id })).fit.seats[0]!.kneePad.aftM).toBe(0.2);
    await way.close();
  });
});
