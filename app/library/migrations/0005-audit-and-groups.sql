-- The audit is written by the database itself whenever a row about athletes is read, whatever asks for it; rights are taken back; the
-- head coach says who is in which group.

-- One row for each reader, athlete and hour.
ALTER TABLE audit ADD COLUMN hour timestamptz NOT NULL DEFAULT date_trunc('hour', now());
CREATE UNIQUE INDEX audit_of_readings ON audit (login, athletes, hour) WHERE what = 'read' AND cardinality(athletes) = 1;
-- Of a reading a program can write nothing itself.
DROP POLICY add ON audit;
CREATE POLICY add ON audit FOR INSERT WITH CHECK (login = session_user AND what = 'export');

-- Always true. A transaction that is taken back takes the rows of the audit with it; the line in the server's own log stays.
CREATE FUNCTION noted(read_people uuid[]) RETURNS boolean VOLATILE COST 10000
SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
DECLARE person uuid;
BEGIN
  IF my_role() IS NULL OR my_role() = 'boatbuilder' THEN RETURN true; END IF;
  FOREACH person IN ARRAY read_people LOOP
    INSERT INTO audit (login, what, athletes) VALUES (session_user, 'read', ARRAY[person]) ON CONFLICT DO NOTHING;
    IF FOUND THEN RAISE LOG 'kneelwright audit: % reads %', session_user, person; END IF;
  END LOOP;
  RETURN true;
END $$;

CREATE FUNCTION people_of_record(the_kind text, the_id uuid) RETURNS uuid[]
STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS
$$ SELECT coalesce((SELECT people FROM records WHERE kind = the_kind AND id = the_id), '{}') $$;
CREATE FUNCTION people_of_revision(the_id uuid) RETURNS uuid[]
STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS
$$ SELECT people_of_record('fit', (SELECT fit_id FROM revisions WHERE id = the_id)) $$;

-- Who may read what is as before; whatever may be read is noted.
ALTER POLICY read ON fields USING (CASE WHEN
  EXISTS (SELECT FROM records WHERE records.kind = fields.kind AND records.id = fields.id)
  AND ((SELECT sees_everyone())
    OR ((SELECT my_role()) = 'boatbuilder' AND is_setting(kind, path))
    OR ((SELECT my_role()) IN ('coach', 'viewer') AND (about <@ (SELECT my_athletes())
      OR EXISTS (SELECT FROM records WHERE records.kind = fields.kind AND records.id = fields.id AND made_by = (SELECT me())))))
  THEN noted(people_of_record(kind, id)) ELSE false END);
ALTER POLICY read ON revision_athletes USING (CASE WHEN
  EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id)
  AND ((SELECT sees_everyone()) OR ((SELECT my_role()) IN ('coach', 'viewer') AND (about <@ (SELECT my_athletes())
    OR EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id AND made_by = (SELECT me())))))
  THEN noted(about) ELSE false END);
ALTER POLICY read ON revision_words USING (CASE WHEN
  (SELECT my_role()) <> 'boatbuilder' AND EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id)
  THEN noted(people_of_revision(revision_id)) ELSE false END);
ALTER POLICY read ON photographs USING (CASE WHEN
  EXISTS (SELECT FROM records WHERE kind = 'photo' AND records.hash = photographs.hash)
  THEN noted(coalesce((SELECT array_agg(DISTINCT person) FROM records, unnest(people) AS person
    WHERE kind = 'photo' AND records.hash = photographs.hash), '{}')) ELSE false END);

-- Which library this is: a restored one goes by another id, so that laptops compare everything anew.
DROP FUNCTION call_in(text);
CREATE FUNCTION call_in(store_name text) RETURNS TABLE (club text, person text, role text, writes text[], library uuid)
SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  UPDATE logins SET store = store_name, last_contact = now() WHERE login = session_user;
  SELECT (SELECT name FROM club), people.name, people.role::text,
    ARRAY(SELECT kind FROM unnest(ARRAY['athlete', 'boat', 'paddle', 'photo', 'fit', 'trial']) AS kind WHERE writes_kind(kind)),
    (SELECT club.id FROM club)
  FROM people WHERE people.id = me()
$$;

CREATE FUNCTION as_head_coach() RETURNS void STABLE SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  IF coalesce(my_role(), '') <> 'head-coach' THEN
    RAISE EXCEPTION 'only the head coach does this' USING ERRCODE = 'KW004';
  END IF;
END $$;

-- Groups with their people and athletes, as the head coach sees them.
CREATE FUNCTION list_groups() RETURNS TABLE (id uuid, name text, everyone boolean, people jsonb, athletes uuid[])
SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
#variable_conflict use_column
BEGIN
  PERFORM as_head_coach();
  RETURN QUERY SELECT groups.id, groups.name, groups.everyone,
    coalesce((SELECT jsonb_agg(jsonb_build_object('id', people.id, 'name', people.name, 'role', people.role) ORDER BY people.name)
      FROM group_people JOIN people ON people.id = person_id WHERE group_id = groups.id), '[]'),
    coalesce((SELECT array_agg(athlete_id) FROM group_athletes WHERE group_id = groups.id), '{}')
  FROM groups ORDER BY groups.everyone DESC, groups.name;
END $$;
CREATE FUNCTION make_group(the_name text) RETURNS void
SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  PERFORM as_head_coach();
  INSERT INTO groups (name) VALUES (the_name) ON CONFLICT DO NOTHING;
END $$;
CREATE FUNCTION set_in_group(the_group uuid, the_athlete uuid, is_in boolean) RETURNS void
SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  PERFORM as_head_coach();
  PERFORM pg_advisory_xact_lock(hashtext('kneelwright changes'));
  IF is_in THEN
    INSERT INTO group_athletes (group_id, athlete_id) VALUES (the_group, the_athlete) ON CONFLICT DO NOTHING;
    PERFORM pg_notify('kneelwright', 'changed');
  ELSE
    DELETE FROM group_athletes WHERE group_id = the_group AND athlete_id = the_athlete;
  END IF;
END $$;
