import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { services } from '../../../app/services/services.ts';
import { exampleAthlete, exampleBoat } from '../../core/example/example-fit.ts';
import { temporaryStore } from '../temporary.ts';

const program = () => ({ store: temporaryStore() }) as Parameters<(typeof services)['athletes.open']>[0];

describe('one record', () => {
  it('is opened by its id alone, also when it is archived', async () => {
    const at = program();
    const saved = await services['athletes.save'](at, { athlete: exampleAthlete() });
    await services['athletes.save'](at, { athlete: exampleAthlete({ name: 'Another' }) });
    if (!saved.ok) throw new Error(saved.error.message);
    const { id } = saved.value;
    expect(await services['athletes.open'](at, { id })).toEqual(saved);
    await services['athletes.archive'](at, { id });
    expect(await services['athletes.open'](at, { id })).toMatchObject({
      ok: true,
      value: { archived: true },
    });
    const boat = await services['boats.save'](at, { boat: exampleBoat() });
    if (!boat.ok) throw new Error(boat.error.message);
    expect(await services['boats.open'](at, { id: boat.value.id })).toEqual(boat);
  });

  it('that is not there is said to be not found', async () => {
    const at = program();
    for (const name of ['athletes.open', 'boats.open', 'paddles.open'] as const) {
      const answer = await services[name](at, { id: randomUUID() });
      expect(answer).toMatchObject({ ok: false, error: { code: 'not-found' } });
    }
  });
});
