/**
 * What an athlete measured on each day, photographs of boats, and beside each fit which boat it is in. What
 * the roster knew of each athlete becomes the first entry of the measurings.
 */
export const measuringsAndPhotos = `
CREATE TABLE measurings (
  athlete_id TEXT NOT NULL REFERENCES athletes (id),
  taken_on TEXT NOT NULL,
  measuring TEXT NOT NULL CHECK (json_valid(measuring)),
  saved_at TEXT NOT NULL,
  PRIMARY KEY (athlete_id, taken_on)
) STRICT;

INSERT INTO measurings (athlete_id, taken_on, measuring, saved_at)
SELECT id, day, json_object('takenOn', day, 'statureM', athlete -> '$.statureM', 'massKg', athlete -> '$.massKg',
    'tape', json(coalesce(athlete -> '$.tape', '{}'))), changed_at
FROM (SELECT *, coalesce(athlete ->> '$.measuredOn', substr(changed_at, 1, 10)) AS day FROM athletes)
WHERE json_type(athlete, '$.statureM') IN ('real', 'integer') AND json_type(athlete, '$.massKg') IN ('real', 'integer');

CREATE TABLE boat_photos (
  id TEXT PRIMARY KEY,
  boat_id TEXT NOT NULL REFERENCES boats (id),
  caption TEXT NOT NULL,
  mime TEXT NOT NULL CHECK (mime IN ('image/jpeg', 'image/png', 'image/webp')),
  bytes BLOB NOT NULL,
  added_at TEXT NOT NULL
) STRICT;
CREATE INDEX boat_photos_by_boat ON boat_photos (boat_id, added_at, id);

ALTER TABLE fits ADD COLUMN boat_id TEXT;
CREATE INDEX fits_by_boat ON fits (boat_id);
UPDATE fits SET boat_id = (
  SELECT CASE json_type(newest.fit, '$.boat.id') WHEN 'text' THEN newest.fit ->> '$.boat.id' END
  FROM (
    SELECT coalesce(
      (SELECT fit FROM drafts WHERE fit_id = fits.id),
      (SELECT fit FROM revisions WHERE fit_id = fits.id ORDER BY number DESC LIMIT 1),
      '{}'
    ) AS fit
  ) AS newest
);
`;
