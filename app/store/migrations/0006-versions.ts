/**
 * Who this store is, and the version of every field of every record: what was there before is written by this store, once.
 * Beside that: an entry of a person joined to another one, and those who were erased, by a salted digest.
 */
export const versions = `
-- One row. \`place\` tells a copied folder from the one it was copied from: a copy is a store of its own.
CREATE TABLE this_store (
  id TEXT PRIMARY KEY,
  counter INTEGER NOT NULL CHECK (counter >= 0),
  place TEXT NOT NULL
) STRICT;
INSERT INTO this_store (id, counter, place) VALUES (lower(hex(randomblob(6))), 1, '');

-- Path '' stands for every field without a row of its own. The value is in the record itself.
CREATE TABLE field_versions (
  kind TEXT NOT NULL,
  record_id TEXT NOT NULL,
  path TEXT NOT NULL,
  seen TEXT NOT NULL CHECK (json_valid(seen)),
  writes TEXT NOT NULL CHECK (json_valid(writes)),
  -- Values written elsewhere without knowledge of it, until somebody decides.
  others TEXT NOT NULL CHECK (json_valid(others)),
  PRIMARY KEY (kind, record_id, path)
) STRICT, WITHOUT ROWID;
CREATE INDEX fields_to_decide ON field_versions (kind, record_id, path) WHERE others <> '[]';

INSERT INTO field_versions (kind, record_id, path, seen, writes, others)
SELECT kind, record_id, '', json_object(this_store.id, 1),
  json_array(json_object('store', this_store.id, 'counter', 1, 'at', at)), '[]'
FROM this_store, (
  SELECT 'athlete' AS kind, id AS record_id, changed_at AS at FROM athletes
  UNION ALL SELECT 'boat', id, changed_at FROM boats
  UNION ALL SELECT 'paddle', id, changed_at FROM paddles
  UNION ALL SELECT 'photo', id, added_at FROM boat_photos
  UNION ALL SELECT 'fit', id, changed_at FROM fits
  UNION ALL SELECT 'trial', id, changed_at FROM trials
);

ALTER TABLE athletes ADD COLUMN joined_into TEXT;

CREATE TABLE erased_people (
  salt TEXT NOT NULL,
  digest TEXT NOT NULL,
  PRIMARY KEY (salt, digest)
) STRICT, WITHOUT ROWID;
`;
