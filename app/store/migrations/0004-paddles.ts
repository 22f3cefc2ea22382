/** The club's paddles. */
export const stockPaddles = `
CREATE TABLE paddles (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  search TEXT NOT NULL,
  paddle TEXT NOT NULL CHECK (json_valid(paddle)),
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  archived_at TEXT
) STRICT;
CREATE INDEX paddles_by_name ON paddles (archived_at IS NOT NULL, search, id);
`;
