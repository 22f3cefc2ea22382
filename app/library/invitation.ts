import { randomBytes } from 'node:crypto';
import { z } from 'zod';
import { type LibraryAddress, openLibrary } from './address.ts';

const BEGINS = 'kneelwright-1.';
/** An address as it is kept and told. */
export const addressShape = z.strictObject({
  host: z.string().min(1).max(255),
  port: z.int().min(1).max(65_535),
  database: z.string().min(1).max(63),
  login: z.string().min(1).max(63),
  password: z.string().min(1).max(200),
  ca: z.string().max(20_000).optional(),
});

/** An address and a first password as one code, to be told to one person. It serves once. */
export function codeOf(address: LibraryAddress): string {
  return BEGINS + Buffer.from(JSON.stringify(address)).toString('base64url');
}

/** What a code says; null if it is none. */
export function readCode(code: string): LibraryAddress | null {
  const text = code.replaceAll(/\s/g, '');
  if (!text.startsWith(BEGINS)) return null;
  try {
    const { ca, ...rest } = addressShape.parse(
      JSON.parse(Buffer.from(text.slice(BEGINS.length), 'base64url').toString('utf8')),
    );
    return ca === undefined ? rest : { ...rest, ca };
  } catch {
    return null;
  }
}

/** Uses an invitation: from here on only the password that this computer made opens the login. */
export async function accept(invited: LibraryAddress): Promise<LibraryAddress> {
  const password = randomBytes(24).toString('base64url');
  const sql = openLibrary(invited);
  try {
    await sql`SELECT accept_invitation(${password})`;
  } finally {
    await sql.end();
  }
  return { ...invited, password };
}
