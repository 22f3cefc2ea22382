import { execFileSync } from 'node:child_process';
import { chmodSync, chownSync, copyFileSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { temporaryFolder } from '../temporary.ts';
import type { Club } from './club.ts';

/** An authority of a club that signs its own certificates, made with `openssl`. */
export interface Authority {
  /** Its own certificate, PEM. */
  readonly ca: string;
  /** Makes a certificate for a host, that holds for so many days from now (fewer than none: it held until then); gives the files. */
  certificateFor(host: string, days?: number): { cert: string; key: string };
}

const openssl = (folder: string, ...words: string[]) =>
  execFileSync('openssl', words, { cwd: folder, stdio: ['ignore', 'ignore', 'pipe'] });
const NEW_KEY = ['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:prime256v1', '-nodes'];

export function newAuthority(name: string): Authority {
  const folder = temporaryFolder();
  const own = ['-keyout', 'ca.key', '-out', 'ca.pem', '-days', '2', '-subj', `/CN=${name}`];
  openssl(folder, 'req', '-x509', ...NEW_KEY, ...own);
  let made = 0;
  return {
    ca: readFileSync(join(folder, 'ca.pem'), 'utf8'),
    certificateFor(host, days = 2) {
      made += 1;
      const [key, asked, cert] = [`${made}.key`, `${made}.csr`, `${made}.pem`];
      openssl(folder, 'req', ...NEW_KEY, '-keyout', key, '-out', asked, '-subj', `/CN=${host}`);
      writeFileSync(join(folder, 'names'), `subjectAltName=DNS:${host}`);
      const signing = [
        '-CA',
        'ca.pem',
        '-CAkey',
        'ca.key',
        '-CAcreateserial',
        '-extfile',
        'names',
        '-days',
        String(days),
      ];
      openssl(folder, 'x509', '-req', '-in', asked, '-out', cert, ...signing);
      return { cert: join(folder, cert), key: join(folder, key) };
    },
  };
}

/** Has a server speak TLS with this certificate from now on. */
export async function speakTls(
  { owner }: Club,
  { cert, key }: ReturnType<Authority['certificateFor']>,
): Promise<void> {
  const [where] = await owner<{ folder: string }[]>`SELECT current_setting('data_directory') AS folder`;
  const { folder } = where!;
  const { uid, gid } = statSync(folder);
  for (const [from, name] of [
    [cert, 'server.crt'],
    [key, 'server.key'],
  ] as const) {
    const to = join(folder, name);
    copyFileSync(from, to);
    // The server takes no key that others may read.
    chmodSync(to, 0o600);
    chownSync(to, uid, gid);
  }
  await owner`ALTER SYSTEM SET ssl = on`;
  await owner`SELECT pg_reload_conf()`;
}
