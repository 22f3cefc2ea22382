/**
 * Trials on the water; what each revision answers; the words by which revisions and fits are found. `search_text` is
 * given to SQLite by `migrate.ts`.
 */
export const trials = `
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
CREATE INDEX trials_by_fit ON trials (fit_id);
CREATE INDEX trials_by_athlete ON trials (athlete_id);
CREATE INDEX trials_by_change ON trials (archived_at IS NOT NULL, changed_at DESC, id);

CREATE TABLE revision_words (
  revision_id TEXT PRIMARY KEY REFERENCES revisions (id),
  answers TEXT NOT NULL CHECK (json_valid(answers)),
  athlete_ids TEXT NOT NULL CHECK (json_valid(athlete_ids)),
  search TEXT NOT NULL
) STRICT;
INSERT INTO revision_words (revision_id, answers, athlete_ids, search)
SELECT id, '[]',
  (SELECT json_group_array(json_extract(seat.value, '$.athlete.id')) FROM json_each(revisions.fit, '$.seats') AS seat),
  search_text(name, reason)
FROM revisions;

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

ALTER TABLE fits ADD COLUMN athlete_ids TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(athlete_ids));
UPDATE fits SET (athlete_ids, search) = (
  SELECT
    (SELECT json_group_array(json_extract(seat.value, '$.athlete.id')) FROM json_each(newest.fit, '$.seats') AS seat),
    fits.search || ' ' || search_text(coalesce(json_extract(newest.fit, '$.notes'), ''))
  FROM (
    SELECT coalesce(
      (SELECT fit FROM drafts WHERE fit_id = fits.id),
      (SELECT fit FROM revisions WHERE fit_id = fits.id ORDER BY number DESC LIMIT 1),
      '{}'
    ) AS fit
  ) AS newest
);
`;
