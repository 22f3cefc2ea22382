import type Database from 'better-sqlite3';

/**
 * What is wrong with an open database file; null if nothing is. `quick` reads every page and row but not the indexes
 * against them; `whole` compares those too.
 */
export function damageOf(db: Database.Database, depth: 'quick' | 'whole'): string | null {
  try {
    const check = depth === 'quick' ? 'quick_check(1)' : 'integrity_check(1)';
    const said = db.pragma(check, { simple: true }) as string;
    if (said !== 'ok') return said;
    const orphan = depth === 'whole' ? db.prepare('PRAGMA foreign_key_check').get() : undefined;
    return orphan ? 'a row refers to one that is not there' : null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
