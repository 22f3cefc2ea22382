-- Who asks, and whom they look after, is found out once for each question, not once for each row it looks at: a condition in
-- parentheses of its own is computed before the rows are read. Whom anybody sees stays as it was. What nobody made is hidden too.

CREATE OR REPLACE FUNCTION my_role() RETURNS text STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS
$$ SELECT role::text FROM people WHERE id = (SELECT me()) $$;

CREATE OR REPLACE FUNCTION sees_everyone() RETURNS boolean STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT coalesce((SELECT my_role()) = 'head-coach' OR ((SELECT my_role()) IN ('coach', 'viewer') AND EXISTS (
    SELECT FROM groups JOIN group_people ON group_id = groups.id WHERE everyone AND person_id = (SELECT me()))), false)
$$;

CREATE OR REPLACE FUNCTION my_athletes() RETURNS uuid[] STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT CASE WHEN (SELECT my_role()) IN ('coach', 'viewer') THEN coalesce((SELECT array_agg(id) FROM (
    SELECT athlete_id FROM group_athletes NATURAL JOIN group_people WHERE person_id = (SELECT me())
    UNION SELECT id FROM records WHERE kind = 'athlete' AND made_by = (SELECT me())
  ) AS mine (id)), '{}') ELSE '{}' END
$$;
CREATE INDEX records_by_maker ON records (made_by) WHERE kind = 'athlete';

CREATE OR REPLACE FUNCTION hidden_fields(the_kind text, the_id uuid) RETURNS SETOF text
STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT path FROM fields JOIN records USING (kind, id) WHERE kind = the_kind AND id = the_id AND NOT (
    (SELECT sees_everyone()) OR ((SELECT my_role()) = 'boatbuilder' AND is_setting(kind, path))
    OR ((SELECT my_role()) IN ('coach', 'viewer') AND (about <@ (SELECT my_athletes()) OR coalesce(made_by = (SELECT me()), false))))
$$;
