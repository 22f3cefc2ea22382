import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { type Library, type LibraryAddress, openLibrary } from '../../../app/library/address.ts';
import { initLibrary, invite, type PersonRole } from '../../../app/library/club.ts';
import { accept } from '../../../app/library/invitation.ts';
import { type LocalServer, startLocalServer } from '../../../app/library/local-server.ts';
import { temporaryFolder } from '../temporary.ts';
import { putNewServer } from './new-server.ts';

/** A club's library on a real server, for one test file. */
export interface Club {
  readonly server: LocalServer;
  /** As the database's owner. */
  readonly owner: Library;
  /** A person's login, its invitation accepted. */
  member(name: string, role: PersonRole, groups?: readonly string[]): Promise<LibraryAddress>;
  /** A connection that is closed at the end. */
  as(address: LibraryAddress): Library;
}

export async function startClub(): Promise<Club> {
  const folder = temporaryFolder();
  // The server may run as a user of its own.
  chmodSync(folder, 0o711);
  await putNewServer(join(folder, 'data'));
  const server = await startLocalServer(join(folder, 'data'), { safe: false });
  const open: Library[] = [];
  const as = (address: LibraryAddress) => {
    const sql = openLibrary(address);
    open.push(sql);
    return sql;
  };
  const owner = as(server.address);
  await initLibrary(owner, 'Invented Canoe Club');
  afterAll(async () => {
    for (const sql of open) await sql.end({ timeout: 0 });
    await server.stop();
  });
  return {
    server,
    owner,
    as,
    async member(name, role, groups = []) {
      const { address } = await invite(owner, server.address, { name, role, groups });
      return accept(address);
    },
  };
}
