-- That somebody was erased: a salted digest, no name. It takes the person from the server at once, and from every laptop when
-- that next calls.

CREATE TABLE tombstones (
  salt text NOT NULL,
  digest text NOT NULL,
  made_at timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (salt, digest)
);
CREATE TABLE tombstones_seen (
  login name NOT NULL REFERENCES logins (login) ON DELETE CASCADE,
  salt text NOT NULL,
  digest text NOT NULL,
  at timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (login, salt, digest),
  FOREIGN KEY (salt, digest) REFERENCES tombstones (salt, digest) ON DELETE CASCADE
);

CREATE FUNCTION digest_of(salt text, id uuid) RETURNS text IMMUTABLE LANGUAGE sql AS
$$ SELECT encode(sha256(convert_to(salt || ' ' || id::text, 'UTF8')), 'hex') $$;

-- A name as a pattern that finds it, and every part of it that is long enough to be told from a word.
CREATE FUNCTION names_of(gone uuid) RETURNS text[] STABLE SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT coalesce(array_agg(DISTINCT part), '{}') FROM (
    SELECT value FROM fields WHERE kind = 'athlete' AND id = gone AND path = 'name'
    UNION SELECT (value::jsonb -> 'name')::text FROM fields WHERE kind = 'fit' AND about && ARRAY[gone] AND value ~ '^\{'
    UNION SELECT (value::jsonb -> 'name')::text FROM revision_athletes WHERE about && ARRAY[gone]
  ) AS known (name), regexp_split_to_table(name::jsonb #>> '{}', '\s+') AS part
  WHERE length(part) >= 3
$$;

CREATE FUNCTION purge(gone uuid) RETURNS void SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
DECLARE names text[] := names_of(gone);
DECLARE alone uuid[];
DECLARE crews uuid[];
BEGIN
  SELECT coalesce(array_agg(id), '{}') INTO alone FROM records WHERE kind = 'fit' AND people = ARRAY[gone]
    AND NOT EXISTS (SELECT FROM revisions JOIN revision_athletes ON revision_id = revisions.id
      WHERE fit_id = records.id AND NOT about <@ ARRAY[gone]);
  SELECT coalesce(array_agg(DISTINCT id), '{}') INTO crews FROM (
    SELECT id FROM records WHERE kind = 'fit' AND people && ARRAY[gone]
    UNION SELECT fit_id FROM revisions JOIN revision_athletes ON revision_id = revisions.id WHERE about && ARRAY[gone]
  ) AS fits WHERE id <> ALL (alone);
  DELETE FROM records WHERE (kind = 'athlete' AND id = gone) OR (kind = 'fit' AND id = ANY (alone))
    OR (kind = 'trial' AND (owner = ANY (alone) OR EXISTS (
      SELECT FROM fields WHERE fields.kind = 'trial' AND fields.id = records.id AND path = '@athlete' AND about && ARRAY[gone])))
    OR (kind = 'photo' AND people && ARRAY[gone]);
  DELETE FROM revisions WHERE fit_id = ANY (alone);
  DELETE FROM revision_athletes WHERE about && ARRAY[gone];
  UPDATE revision_words SET name = '', reason = '', private = '{}'
  FROM revisions WHERE revisions.id = revision_id AND fit_id = ANY (crews)
    AND EXISTS (SELECT FROM unnest(names) AS one WHERE strpos(lower(revision_words.name || reason || private), lower(one)) > 0);
  UPDATE fields SET others = coalesce((SELECT jsonb_agg(other) FROM jsonb_array_elements(others) AS other
      WHERE strpos(other ->> 'value', gone::text) = 0 OR other ->> 'value' IS NULL), '[]'),
    value = CASE WHEN strpos(value, gone::text) > 0 THEN 'null' ELSE value END
  WHERE about && ARRAY[gone];
  DELETE FROM group_athletes WHERE athlete_id = gone;
  DELETE FROM photographs WHERE NOT EXISTS (SELECT FROM records WHERE kind = 'photo' AND records.hash = photographs.hash);
  UPDATE audit SET athletes = array_remove(athletes, gone) WHERE athletes && ARRAY[gone];
END $$;
REVOKE ALL ON FUNCTION purge(uuid) FROM PUBLIC;

CREATE FUNCTION purge_erased() RETURNS trigger SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
DECLARE gone uuid;
BEGIN
  FOR gone IN SELECT DISTINCT id FROM (
    SELECT unnest(people) FROM records UNION SELECT unnest(about) FROM revision_athletes
  ) AS known (id) WHERE digest_of(NEW.salt, id) = NEW.digest
  LOOP PERFORM purge(gone); END LOOP;
  RETURN NULL;
END $$;
CREATE TRIGGER the_erased_go AFTER INSERT ON tombstones FOR EACH ROW EXECUTE FUNCTION purge_erased();

-- A laptop that has not heard of it yet cannot bring the person back.
CREATE FUNCTION refuse_erased() RETURNS trigger SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT FROM tombstones, unnest(NEW.about) AS person WHERE digest_of(salt, person) = digest) THEN
    RAISE EXCEPTION 'somebody in it was erased' USING ERRCODE = 'KW002';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER fields_of_the_erased AFTER INSERT OR UPDATE OF value, others ON fields FOR EACH ROW
  WHEN (NEW.about <> '{}') EXECUTE FUNCTION refuse_erased();
CREATE TRIGGER revisions_of_the_erased AFTER INSERT ON revision_athletes FOR EACH ROW
  WHEN (NEW.about <> '{}') EXECUTE FUNCTION refuse_erased();

-- For whom a tombstone is still to come: laptops that may hold the person yet.
CREATE VIEW not_called_since AS
SELECT people.name AS person, login, last_contact, count(*)::int AS tombstones
FROM tombstones CROSS JOIN logins JOIN people ON people.id = person_id
WHERE accepted_at IS NOT NULL AND NOT EXISTS (
  SELECT FROM tombstones_seen AS seen WHERE seen.login = logins.login AND seen.salt = tombstones.salt AND seen.digest = tombstones.digest)
GROUP BY people.name, login, last_contact;

ALTER TABLE tombstones ENABLE ROW LEVEL SECURITY;
ALTER TABLE tombstones_seen ENABLE ROW LEVEL SECURITY;
CREATE POLICY read ON tombstones FOR SELECT USING ((SELECT me()) IS NOT NULL);
CREATE POLICY own ON tombstones_seen FOR ALL USING (login = session_user) WITH CHECK (login = session_user);

-- A coach erases only whom the coach may see; what nobody has here is only written down.
CREATE FUNCTION erase(the_salt text, the_digest text) RETURNS void
SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
DECLARE gone uuid := (SELECT id FROM records WHERE kind = 'athlete' AND digest_of(the_salt, id) = the_digest);
BEGIN
  IF coalesce(my_role(), '') NOT IN ('head-coach', 'coach')
    OR (gone IS NOT NULL AND NOT sees_everyone() AND gone <> ALL (my_athletes())) THEN
    RAISE EXCEPTION 'this person may not erase' USING ERRCODE = 'KW003';
  END IF;
  INSERT INTO audit (login, what, athletes) VALUES (session_user, 'erase', '{}');
  INSERT INTO tombstones (salt, digest) VALUES (the_salt, the_digest) ON CONFLICT DO NOTHING;
END $$;
