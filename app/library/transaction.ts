import { errorCode } from '../shell/error-code.ts';
import type { Library } from './address.ts';
import type { Asking } from './server-record.ts';

/** What the driver, the system and a server that ends say when a connection is lost. */
const LOST = /^(CONNECTION_|E[A-Z]|57P|08)/;

/**
 * Runs `work` as one transaction. The driver's own way asks a connection that is lost to roll back, and ends the whole program
 * by that; a lost connection is rolled back by the server.
 */
export async function transaction<T>(
  sql: Library,
  work: (tx: Asking) => Promise<T>,
  how: '' | 'ISOLATION LEVEL REPEATABLE READ' = '',
): Promise<T> {
  // The driver (3.4.9, without its own question for types) waits for ever to reserve a connection that is not open: a lost one
  // is opened again by a plain question.
  await sql`SELECT 1`;
  const tx = await sql.reserve();
  try {
    await tx.unsafe(`BEGIN ${how}`);
    const result = await work(tx);
    await tx`COMMIT`;
    tx.release();
    return result;
  } catch (error) {
    if (!LOST.test(errorCode(error))) {
      await tx`ROLLBACK`;
      tx.release();
    }
    throw error;
  }
}
