-- store version 9

CREATE INDEX athletes_by_name ON athletes (archived_at IS NOT NULL, search, id);

CREATE INDEX boat_photos_by_athlete ON boat_photos (athlete_id, added_at, id);

CREATE INDEX boat_photos_by_boat ON boat_photos (boat_id, added_at, id);

CREATE INDEX boats_by_name ON boats (archived_at IS NOT NULL, search, id);

CREATE INDEX fields_to_decide ON field_versions (kind, record_id, path) WHERE others <> '[]';

CREATE INDEX fits_by_boat ON fits (boat_id);

CREATE INDEX fits_by_change ON fits (archived_at IS NOT NULL, changed_at DESC, id);

CREATE INDEX paddles_by_name ON paddles (archived_at IS NOT NULL, search, id);

CREATE INDEX revisions_by_athlete_0 ON revision_words ((CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> 0 END), saved_at) WHERE (CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> 0 END) IS NOT NULL;

CREATE INDEX revisions_by_athlete_1 ON revision_words ((CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> 1 END), saved_at) WHERE (CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> 1 END) IS NOT NULL;

CREATE INDEX revisions_by_athlete_2 ON revision_words ((CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> 2 END), saved_at) WHERE (CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> 2 END) IS NOT NULL;

CREATE INDEX revisions_by_athlete_3 ON revision_words ((CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> 3 END), saved_at) WHERE (CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> 3 END) IS NOT NULL;

CREATE INDEX trials_by_athlete ON trials (athlete_id);

CREATE INDEX trials_by_change ON trials (archived_at IS NOT NULL, changed_at DESC, id);

CREATE INDEX trials_by_fit ON trials (fit_id);

CREATE TABLE athletes (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  search TEXT NOT NULL,
  athlete TEXT NOT NULL CHECK (json_valid(athlete)),
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  archived_at TEXT
, joined_into TEXT) STRICT;

CREATE TABLE boat_photos (
  id TEXT PRIMARY KEY,
  boat_id TEXT NOT NULL REFERENCES boats (id),
  caption TEXT NOT NULL,
  mime TEXT NOT NULL CHECK (mime IN ('image/jpeg', 'image/png', 'image/webp')),
  bytes BLOB NOT NULL,
  added_at TEXT NOT NULL
, athlete_id TEXT, fit_id TEXT, study TEXT CHECK (study IS NULL OR json_valid(study))) STRICT;

CREATE TABLE boats (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  search TEXT NOT NULL,
  boat TEXT NOT NULL CHECK (json_valid(boat)),
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  archived_at TEXT
) STRICT;

CREATE TABLE drafts (
  fit_id TEXT PRIMARY KEY REFERENCES fits (id),
  saved_at TEXT NOT NULL,
  fit TEXT NOT NULL CHECK (json_valid(fit))
) STRICT;

CREATE TABLE erased_people (
  salt TEXT NOT NULL,
  digest TEXT NOT NULL,
  PRIMARY KEY (salt, digest)
) STRICT, WITHOUT ROWID;

CREATE TABLE erasing (
  revision_id TEXT PRIMARY KEY
) STRICT;

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

CREATE TABLE fits (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  boat_name TEXT NOT NULL,
  athlete_names TEXT NOT NULL CHECK (json_valid(athlete_names)),
  search TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  archived_at TEXT
, athlete_ids TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(athlete_ids)), boat_id TEXT) STRICT;

CREATE TABLE journal_position (
  line TEXT PRIMARY KEY,
  n INTEGER NOT NULL CHECK (n >= 0)
) STRICT, WITHOUT ROWID;

CREATE TABLE measurings (
  athlete_id TEXT NOT NULL REFERENCES athletes (id),
  taken_on TEXT NOT NULL,
  measuring TEXT NOT NULL CHECK (json_valid(measuring)),
  saved_at TEXT NOT NULL,
  PRIMARY KEY (athlete_id, taken_on)
) STRICT;

CREATE TABLE paddles (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  search TEXT NOT NULL,
  paddle TEXT NOT NULL CHECK (json_valid(paddle)),
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  archived_at TEXT
) STRICT;

CREATE TABLE quarantine (
  table_name TEXT NOT NULL,
  row_id TEXT NOT NULL,
  problem TEXT NOT NULL,
  raw TEXT NOT NULL,
  found_at TEXT NOT NULL,
  PRIMARY KEY (table_name, row_id)
) STRICT;

CREATE TABLE revision_words (
  revision_id TEXT PRIMARY KEY REFERENCES revisions (id),
  answers TEXT NOT NULL CHECK (json_valid(answers)),
  athlete_ids TEXT NOT NULL CHECK (json_valid(athlete_ids)),
  search TEXT NOT NULL
, saved_at TEXT) STRICT;

CREATE TABLE revisions (
  id TEXT PRIMARY KEY,
  fit_id TEXT NOT NULL REFERENCES fits (id),
  number INTEGER NOT NULL CHECK (number >= 1),
  name TEXT NOT NULL,
  reason TEXT NOT NULL,
  saved_at TEXT NOT NULL,
  fit TEXT NOT NULL CHECK (json_valid(fit)),
  UNIQUE (fit_id, number)
) STRICT;

CREATE TABLE row_sums (
  table_name TEXT NOT NULL,
  row_key TEXT NOT NULL,
  sum INTEGER NOT NULL,
  PRIMARY KEY (table_name, row_key)
) STRICT, WITHOUT ROWID;

CREATE TABLE this_store (
  id TEXT PRIMARY KEY,
  counter INTEGER NOT NULL CHECK (counter >= 0),
  place TEXT NOT NULL
) STRICT;

CREATE TABLE trials (
  id TEXT PRIMARY KEY,
  fit_id TEXT NOT NULL REFERENCES fits (id),
  -- No foreign key: a trial outlives a revision that a damaged disk took.
  revision_id TEXT NOT NULL,
  athlete_id TEXT,
  trial TEXT NOT NULL CHECK (json_valid(trial)),
  search TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  archived_at TEXT
) STRICT;

CREATE TRIGGER revision_words_are_never_changed BEFORE UPDATE ON revision_words
WHEN OLD.revision_id NOT IN (SELECT revision_id FROM erasing)
BEGIN
  SELECT RAISE(ABORT, 'revisions are never changed');
END;

CREATE TRIGGER revision_words_are_never_deleted BEFORE DELETE ON revision_words
WHEN OLD.revision_id NOT IN (SELECT revision_id FROM erasing)
BEGIN
  SELECT RAISE(ABORT, 'revisions are never deleted');
END;

CREATE TRIGGER revisions_are_never_changed BEFORE UPDATE ON revisions
WHEN OLD.id NOT IN (SELECT revision_id FROM erasing)
BEGIN
  SELECT RAISE(ABORT, 'revisions are never changed');
END;

CREATE TRIGGER revisions_are_never_deleted BEFORE DELETE ON revisions
WHEN OLD.id NOT IN (SELECT revision_id FROM erasing)
BEGIN
  SELECT RAISE(ABORT, 'revisions are never deleted');
END;
