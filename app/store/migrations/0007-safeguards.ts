/** What tells damage: a checksum of every row, and how far the journal beside the store had come. */
export const safeguards = `
CREATE TABLE row_sums (
  table_name TEXT NOT NULL,
  row_key TEXT NOT NULL,
  sum INTEGER NOT NULL,
  PRIMARY KEY (table_name, row_key)
) STRICT, WITHOUT ROWID;

-- One row. \`line\` names this store and its backups, whatever happens to the file; \`n\` counts rows written.
CREATE TABLE journal_position (
  line TEXT PRIMARY KEY,
  n INTEGER NOT NULL CHECK (n >= 0)
) STRICT, WITHOUT ROWID;
INSERT INTO journal_position (line, n) VALUES (lower(hex(randomblob(8))), 0);
`;
