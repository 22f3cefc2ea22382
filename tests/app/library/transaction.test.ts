import { beforeAll, describe, expect, it } from 'vitest';
import { openLibrary } from '../../../app/library/address.ts';
import { transaction } from '../../../app/library/transaction.ts';
import { type Club, startClub } from './club.ts';

let club: Club;
beforeAll(async () => {
  club = await startClub();
});

describe('a transaction', () => {
  it('opens the connection anew where it was lost since the last question, and where there was none yet', async () => {
    const address = await club.member('Kim', 'coach');
    let close = () => {};
    const closed = new Promise<void>((done) => {
      close = done;
    });
    const sql = openLibrary(address, { lost: close });
    const ask = () =>
      transaction(sql, async (tx) => (await tx<{ pid: number }[]>`SELECT pg_backend_pid() AS pid`)[0]!.pid);
    const first = await ask();
    await club.owner`SELECT pg_terminate_backend(${first})`;
    await closed;
    expect(await ask()).not.toBe(first);
    await sql.end({ timeout: 0 });
  });
});
