import type { Library } from './address.ts';

/** One entry of the audit: who did what with whose data. */
export interface AuditEntry {
  readonly at: Date;
  /** The person, or the login of one who is no longer known. */
  readonly person: string;
  readonly what: 'read' | 'export' | 'backup' | 'erase';
  /** Identifiers of athletes. */
  readonly athletes: readonly string[];
  /** Those of them who were minors then, or whose birth date was not known. */
  readonly minors: readonly string[];
}

/** The audit, newest first; of one athlete, or all of it; or only what was about minors. */
export async function readAudit(
  sql: Library,
  athlete: string | null,
  of: 'all' | 'minors' = 'all',
): Promise<AuditEntry[]> {
  const rows = await sql<AuditEntry[]>`
    SELECT at, coalesce(people.name, audit.login::text) AS person, what, athletes, minors FROM kneelwright.audit
    LEFT JOIN kneelwright.logins ON logins.login = audit.login LEFT JOIN kneelwright.people ON people.id = person_id
    WHERE (${athlete}::uuid IS NULL OR ${athlete}::uuid = ANY (athletes)) AND (${of} = 'all' OR minors <> '{}') ORDER BY n DESC`;
  return [...rows];
}
