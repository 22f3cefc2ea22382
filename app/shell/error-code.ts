/** The code of an error of the file system, the network, SQLite or PostgreSQL; empty if it has none. */
export function errorCode(error: unknown): string {
  const { code } = Object(error) as { code?: unknown };
  return typeof code === 'string' ? code : '';
}
