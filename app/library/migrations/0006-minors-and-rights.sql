-- The audit says which athletes were minors when their data was read or taken along. Whoever leaves a group is news to its coaches.

-- A birth date that is not known counts as a minor's.
CREATE FUNCTION was_minor(person uuid, at timestamptz) RETURNS boolean
STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT coalesce((SELECT (value::jsonb #>> '{}')::date + interval '18 years' > at FROM fields
    WHERE kind = 'athlete' AND id = person AND path = 'bornOn' AND value ~ '^"\d{4}-\d\d-\d\d"$'), true)
$$;

ALTER TABLE audit ADD COLUMN minors uuid[] NOT NULL DEFAULT '{}';
UPDATE audit SET minors = ARRAY(SELECT person FROM unnest(athletes) AS person WHERE was_minor(person, at));

CREATE FUNCTION mark_minors() RETURNS trigger SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  -- An entry that is there keeps what it says, of those whom it still names.
  NEW.minors := CASE TG_OP WHEN 'INSERT' THEN
    ARRAY(SELECT person FROM unnest(NEW.athletes) AS person WHERE was_minor(person, now()))
  ELSE ARRAY(SELECT person FROM unnest(OLD.minors) AS person WHERE person = ANY (NEW.athletes)) END;
  RETURN NEW;
END $$;
CREATE TRIGGER minors_in_audit BEFORE INSERT OR UPDATE ON audit FOR EACH ROW EXECUTE FUNCTION mark_minors();

-- Which of these records are here, seen or not: a laptop learns what it may no longer see, and keeps what was never here.
CREATE FUNCTION are_here(the_kind text, ids uuid[]) RETURNS SETOF uuid
STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS
$$ SELECT id FROM records WHERE me() IS NOT NULL AND kind = the_kind AND id = ANY (ids) $$;

CREATE FUNCTION tell_of_leaving() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_notify('kneelwright', 'changed');
  RETURN NULL;
END $$;
CREATE TRIGGER athletes_leave_groups AFTER DELETE ON group_athletes FOR EACH STATEMENT EXECUTE FUNCTION tell_of_leaving();
CREATE TRIGGER people_leave_groups AFTER DELETE ON group_people FOR EACH STATEMENT EXECUTE FUNCTION tell_of_leaving();
