import { expect, it } from 'vitest';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { throughLoopback } from '../shells/through-loopback.ts';
import { value } from '../shells/way-in.ts';
import { temporaryFolder } from '../temporary.ts';

it('whoever was erased does not come back from a page that was open before', async () => {
  const way = await throughLoopback(temporaryFolder());
  const saved = value(await way.call('athletes.save', { athlete: inventedAthlete('Goes Invented') }));
  const fit = inventedFit({ athlete: saved.athlete });
  const made = value(await way.call('fits.create', { fit }));
  value(await way.call('athletes.erase', { id: saved.id, name: 'Goes Invented' }));
  for (const [name, input] of [
    ['athletes.save', { athlete: saved.athlete }],
    ['fits.create', { fit }],
    ['drafts.save', { id: made.id, fit }],
  ] as const)
    expect(await way.call(name, input as never), name).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  expect(value(await way.call('athletes.list', {}))).toEqual([]);
  expect(value(await way.call('fits.list', {}))).toEqual([]);
  value(await way.call('athletes.save', { athlete: inventedAthlete('Comes Invented') }));
  await way.close();
});
