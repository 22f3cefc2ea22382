-- Who may read and write what. The database itself holds to it, whatever a program asks for.

CREATE FUNCTION me() RETURNS uuid STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS
$$ SELECT person_id FROM logins WHERE login = session_user $$;

CREATE FUNCTION my_role() RETURNS text STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS
$$ SELECT role::text FROM people WHERE id = me() $$;

-- Coaches and viewers of a group that holds everyone see as the head coach does.
CREATE FUNCTION sees_everyone() RETURNS boolean STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT coalesce(my_role() = 'head-coach' OR (my_role() IN ('coach', 'viewer') AND EXISTS (
    SELECT FROM groups JOIN group_people ON group_id = groups.id WHERE everyone AND person_id = me())), false)
$$;

CREATE FUNCTION my_athletes() RETURNS uuid[] STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT CASE WHEN my_role() IN ('coach', 'viewer') THEN coalesce((SELECT array_agg(id) FROM (
    SELECT athlete_id FROM group_athletes NATURAL JOIN group_people WHERE person_id = me()
    UNION SELECT id FROM records WHERE kind = 'athlete' AND made_by = me()
  ) AS mine (id)), '{}') ELSE '{}' END
$$;

ALTER TABLE records ENABLE ROW LEVEL SECURITY;
ALTER TABLE fields ENABLE ROW LEVEL SECURITY;
ALTER TABLE revisions ENABLE ROW LEVEL SECURITY;
ALTER TABLE revision_athletes ENABLE ROW LEVEL SECURITY;
ALTER TABLE revision_words ENABLE ROW LEVEL SECURITY;
ALTER TABLE photographs ENABLE ROW LEVEL SECURITY;
ALTER TABLE presence ENABLE ROW LEVEL SECURITY;
ALTER TABLE audit ENABLE ROW LEVEL SECURITY;

CREATE POLICY read ON records FOR SELECT USING (
  (SELECT sees_everyone())
  OR ((SELECT my_role()) = 'boatbuilder' AND (kind IN ('boat', 'paddle', 'fit') OR (kind = 'photo' AND people = '{}')))
  OR ((SELECT my_role()) IN ('coach', 'viewer')
    AND (people = '{}' OR people && (SELECT my_athletes()) OR made_by = (SELECT me())))
);
CREATE FUNCTION writes_kind(kind text) RETURNS boolean STABLE LANGUAGE sql AS $$
  SELECT coalesce(kneelwright.my_role() IN ('head-coach', 'coach')
    OR (kneelwright.my_role() = 'boatbuilder' AND kind IN ('boat', 'paddle', 'photo')), false)
$$;
CREATE POLICY add ON records FOR INSERT WITH CHECK (writes_kind(kind));
-- Whoever may read a record and write its kind may change it: the first condition is that of reading.
CREATE POLICY change ON records FOR UPDATE USING (writes_kind(kind)) WITH CHECK (writes_kind(kind));

CREATE POLICY read ON fields FOR SELECT USING (
  EXISTS (SELECT FROM records WHERE records.kind = fields.kind AND records.id = fields.id)
  AND ((SELECT sees_everyone())
    OR ((SELECT my_role()) = 'boatbuilder' AND is_setting(kind, path))
    OR ((SELECT my_role()) IN ('coach', 'viewer') AND (about <@ (SELECT my_athletes())
      OR EXISTS (SELECT FROM records WHERE records.kind = fields.kind AND records.id = fields.id AND made_by = (SELECT me())))))
);
CREATE FUNCTION writes_field(the_kind text, the_id uuid, path text) RETURNS boolean STABLE LANGUAGE sql AS $$
  SELECT kneelwright.writes_kind(the_kind)
    AND (kneelwright.my_role() <> 'boatbuilder' OR kneelwright.is_setting(the_kind, path))
    AND EXISTS (SELECT FROM kneelwright.records WHERE kind = the_kind AND id = the_id)
$$;
CREATE POLICY add ON fields FOR INSERT WITH CHECK (writes_field(kind, id, path));
CREATE POLICY change ON fields FOR UPDATE USING (writes_field(kind, id, path)) WITH CHECK (writes_field(kind, id, path));

CREATE POLICY read ON revisions FOR SELECT USING (
  EXISTS (SELECT FROM records WHERE kind = 'fit' AND records.id = fit_id));
CREATE POLICY add ON revisions FOR INSERT WITH CHECK (
  writes_kind('fit') AND EXISTS (SELECT FROM records WHERE kind = 'fit' AND records.id = fit_id));
CREATE POLICY read ON revision_athletes FOR SELECT USING (
  EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id)
  AND ((SELECT sees_everyone()) OR ((SELECT my_role()) IN ('coach', 'viewer') AND (about <@ (SELECT my_athletes())
    OR EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id AND made_by = (SELECT me())))))
);
CREATE POLICY add ON revision_athletes FOR INSERT WITH CHECK (
  writes_kind('fit') AND EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id AND made_by = me()));
CREATE POLICY read ON revision_words FOR SELECT USING (
  (SELECT my_role()) <> 'boatbuilder' AND EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id));
CREATE POLICY add ON revision_words FOR INSERT WITH CHECK (
  writes_kind('fit') AND EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id AND made_by = me()));

CREATE POLICY read ON photographs FOR SELECT USING (
  EXISTS (SELECT FROM records WHERE kind = 'photo' AND records.hash = photographs.hash));
CREATE POLICY add ON photographs FOR INSERT WITH CHECK (writes_kind('photo'));

CREATE POLICY read ON presence FOR SELECT USING (
  EXISTS (SELECT FROM records WHERE kind = 'fit' AND records.id = fit_id));
CREATE POLICY own ON presence FOR ALL USING (login = session_user) WITH CHECK (login = session_user);
CREATE POLICY add ON audit FOR INSERT WITH CHECK (login = session_user);
CREATE POLICY read ON audit FOR SELECT USING ((SELECT my_role()) = 'head-coach');

-- Fields of these records that are there and hidden from whoever asks: they are neither merged nor written.
CREATE FUNCTION hidden_fields(the_kind text, the_id uuid) RETURNS SETOF text
STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT path FROM fields JOIN records USING (kind, id) WHERE kind = the_kind AND id = the_id AND NOT (
    sees_everyone() OR (my_role() = 'boatbuilder' AND is_setting(kind, path))
    OR (my_role() IN ('coach', 'viewer') AND (about <@ my_athletes() OR made_by = me())))
$$;

-- Only who holds the invitation knows the first password; with the second one it has served.
CREATE FUNCTION accept_invitation(password text) RETURNS void
SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  UPDATE logins SET accepted_at = now() WHERE login = session_user AND accepted_at IS NULL;
  IF NOT FOUND THEN RAISE EXCEPTION 'the invitation has been used' USING ERRCODE = 'KW001'; END IF;
  EXECUTE format('ALTER ROLE %I PASSWORD %L VALID UNTIL ''infinity''', session_user, password);
END $$;

-- A laptop calls: its store's name, and what the program may know of whoever it is.
CREATE FUNCTION call_in(store_name text) RETURNS TABLE (club text, person text, role text, writes text[])
SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  UPDATE logins SET store = store_name, last_contact = now() WHERE login = session_user;
  SELECT (SELECT name FROM club), people.name, people.role::text,
    ARRAY(SELECT kind FROM unnest(ARRAY['athlete', 'boat', 'paddle', 'photo', 'fit', 'trial']) AS kind WHERE writes_kind(kind))
  FROM people WHERE people.id = me()
$$;

CREATE FUNCTION who_is_there() RETURNS TABLE (fit_id uuid, name text)
STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT presence.fit_id, people.name FROM presence JOIN logins USING (login) JOIN people ON people.id = person_id
  WHERE at > now() - interval '3 minutes' AND login <> session_user AND me() IS NOT NULL
    AND (sees_everyone() OR EXISTS (SELECT FROM records WHERE kind = 'fit' AND records.id = presence.fit_id
      AND (people = '{}' OR people && my_athletes() OR made_by = me())))
$$;

-- An athlete who comes into a group is news to its coaches, and so is everything about that athlete.
CREATE FUNCTION tell_of_athlete() RETURNS trigger SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  UPDATE records SET n = nextval('change_number'), sent_by = NULL WHERE people && ARRAY[NEW.athlete_id];
  UPDATE revisions SET n = nextval('change_number'), sent_by = NULL
  WHERE fit_id IN (SELECT id FROM records WHERE kind = 'fit' AND people && ARRAY[NEW.athlete_id]);
  RETURN NULL;
END $$;
CREATE TRIGGER athletes_come_into_groups AFTER INSERT ON group_athletes FOR EACH ROW EXECUTE FUNCTION tell_of_athlete();
