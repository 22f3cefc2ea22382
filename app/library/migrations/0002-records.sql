-- What is shared. A record is kept field by field, each with the version that merging needs; see app/changes.

CREATE SEQUENCE change_number;

CREATE TABLE records (
  kind text NOT NULL CHECK (kind IN ('athlete', 'boat', 'paddle', 'photo', 'fit', 'trial')),
  id uuid NOT NULL,
  -- The fit of a trial, the boat of a photograph.
  owner uuid,
  created_at text NOT NULL,
  changed_at text NOT NULL,
  -- Of a photograph: what kind of picture, and which one.
  mime text,
  hash text,
  base_seen jsonb NOT NULL,
  base_writes jsonb NOT NULL,
  -- Athletes whom it is about; kept by the trigger below.
  people uuid[] NOT NULL DEFAULT '{}',
  made_by uuid,
  -- The store that has it just so: it need not fetch it.
  sent_by text,
  -- Grows with every change, in the order in which changes are there to be seen.
  n bigint NOT NULL DEFAULT nextval('change_number'),
  PRIMARY KEY (kind, id)
);
CREATE INDEX records_by_change ON records (n);
CREATE INDEX records_by_owner ON records (owner);
CREATE INDEX records_by_people ON records USING gin (people);

-- Whom a field is about. A copy of an athlete without an identifier is about somebody whom nobody looks after: all zeros.
CREATE FUNCTION person_in(athlete jsonb) RETURNS uuid[] IMMUTABLE LANGUAGE sql AS $$
  SELECT CASE WHEN athlete IS NULL OR athlete = 'null' THEN '{}'::uuid[]
    ELSE ARRAY[coalesce(athlete ->> 'id', '00000000-0000-0000-0000-000000000000')::uuid] END
$$;

CREATE FUNCTION people_of_value(kind text, path text, value text) RETURNS uuid[] IMMUTABLE LANGUAGE sql AS $$
  SELECT CASE
    WHEN value IS NULL OR value = 'null' THEN '{}'::uuid[]
    WHEN kind = 'fit' AND path ~ '^seats/[0-9]+/athlete$' THEN kneelwright.person_in(value::jsonb)
    WHEN (kind = 'trial' AND path = '@athlete') OR (kind = 'photo' AND path = 'athleteId')
      THEN ARRAY[(value::jsonb #>> '{}')::uuid]
    ELSE '{}'::uuid[] END
$$;

CREATE FUNCTION people_of_field(kind text, id uuid, path text, value text, others jsonb) RETURNS uuid[]
IMMUTABLE LANGUAGE sql AS $$
  SELECT CASE WHEN kind = 'athlete' THEN ARRAY[id] ELSE
    kneelwright.people_of_value(kind, path, value) || coalesce((
      SELECT array_agg(person) FROM jsonb_array_elements(others) AS other,
        unnest(kneelwright.people_of_value(kind, path, other ->> 'value')) AS person
    ), '{}') END
$$;

CREATE TABLE fields (
  kind text NOT NULL,
  id uuid NOT NULL,
  path text NOT NULL,
  -- As JSON text; null where the field was removed.
  value text,
  -- Null where the record's own version is the field's.
  seen jsonb,
  writes jsonb,
  others jsonb NOT NULL DEFAULT '[]',
  about uuid[] NOT NULL GENERATED ALWAYS AS (people_of_field(kind, id, path, value, others)) STORED,
  PRIMARY KEY (kind, id, path),
  FOREIGN KEY (kind, id) REFERENCES records (kind, id) ON DELETE CASCADE
);

CREATE FUNCTION keep_people() RETURNS trigger SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
DECLARE now_about uuid[] := coalesce((
  SELECT array_agg(DISTINCT person ORDER BY person) FROM fields, unnest(about) AS person WHERE kind = NEW.kind AND id = NEW.id
), '{}');
BEGIN
  -- A trial of nobody in particular is about those in its fit.
  IF NEW.kind = 'trial' AND now_about = '{}' THEN
    now_about := coalesce((SELECT fit.people FROM records AS fit JOIN records AS trial ON fit.id = trial.owner
      WHERE fit.kind = 'fit' AND trial.kind = 'trial' AND trial.id = NEW.id), '{}');
  END IF;
  UPDATE records SET people = now_about WHERE kind = NEW.kind AND id = NEW.id AND people <> now_about;
  IF FOUND AND NEW.kind = 'fit' THEN
    UPDATE records AS trial SET people = now_about WHERE kind = 'trial' AND owner = NEW.id AND NOT EXISTS (
      SELECT FROM fields WHERE fields.kind = 'trial' AND fields.id = trial.id AND about <> '{}');
    -- Whoever sees the fit from now on has not fetched what belongs to it.
    UPDATE records SET n = nextval('change_number'), sent_by = NULL WHERE kind = 'trial' AND owner = NEW.id;
    UPDATE revisions SET n = nextval('change_number'), sent_by = NULL WHERE fit_id = NEW.id;
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER people_of_records AFTER INSERT OR UPDATE OF value, others ON fields FOR EACH ROW
  WHEN (NEW.kind IN ('fit', 'trial', 'photo') AND (NEW.about <> '{}' OR NEW.path ~ 'athlete'))
  EXECUTE FUNCTION keep_people();

CREATE FUNCTION begin_record() RETURNS trigger SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  NEW.made_by := (SELECT person_id FROM logins WHERE login = session_user);
  NEW.people := CASE WHEN NEW.kind = 'athlete' THEN ARRAY[NEW.id]
    WHEN NEW.kind = 'trial' THEN coalesce((SELECT people FROM records WHERE kind = 'fit' AND id = NEW.owner), '{}')
    ELSE '{}' END;
  RETURN NEW;
END $$;
CREATE TRIGGER records_begin BEFORE INSERT ON records FOR EACH ROW EXECUTE FUNCTION begin_record();

-- A boatbuilder reads settings: no body, no posture, no words about how somebody kneels.
CREATE FUNCTION is_setting(kind text, path text) RETURNS boolean IMMUTABLE LANGUAGE sql AS $$
  SELECT kind IN ('boat', 'paddle') OR (kind = 'photo' AND path = 'caption')
    OR (kind = 'fit' AND path ~ ('^(@archived|name|format|boat|heelDeg|water/.*'
      '|seats/[0-9]+/(side|kneels|locks|kneePad/.*|rearRest/.*|frontFoot/.*|paddle/.*))$'))
$$;
CREATE FUNCTION are_settings(fit jsonb) RETURNS boolean IMMUTABLE LANGUAGE sql AS
$$ SELECT bool_and(kneelwright.is_setting('fit', path)) FROM jsonb_object_keys(fit) AS path $$;

-- Revisions never change. Copies of athletes and words stand beside the settings, for those who may read them.
CREATE TABLE revisions (
  id uuid PRIMARY KEY,
  fit_id uuid NOT NULL,
  number integer NOT NULL,
  saved_at text NOT NULL,
  settings text NOT NULL CHECK (are_settings(settings::jsonb)),
  made_by uuid,
  sent_by text,
  n bigint NOT NULL DEFAULT nextval('change_number')
);
CREATE INDEX revisions_by_change ON revisions (n);
CREATE INDEX revisions_by_fit ON revisions (fit_id, number);

CREATE FUNCTION begin_revision() RETURNS trigger SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE plpgsql AS $$
BEGIN
  NEW.made_by := (SELECT person_id FROM logins WHERE login = session_user);
  RETURN NEW;
END $$;
CREATE TRIGGER revisions_begin BEFORE INSERT ON revisions FOR EACH ROW EXECUTE FUNCTION begin_revision();

CREATE TABLE revision_athletes (
  revision_id uuid NOT NULL REFERENCES revisions (id) ON DELETE CASCADE,
  path text NOT NULL,
  value text NOT NULL,
  about uuid[] NOT NULL GENERATED ALWAYS AS (people_of_value('fit', path, value)) STORED,
  PRIMARY KEY (revision_id, path)
);
CREATE TABLE revision_words (
  revision_id uuid PRIMARY KEY REFERENCES revisions (id) ON DELETE CASCADE,
  name text NOT NULL,
  reason text NOT NULL,
  answers text NOT NULL,
  -- What of the fit a boatbuilder does not see, by its path.
  private text NOT NULL
);

CREATE TABLE photographs (
  hash text PRIMARY KEY CHECK (hash = encode(sha256(bytes), 'hex')),
  bytes bytea NOT NULL CHECK (length(bytes) <= 4194304)
);

-- Who has a fit open, as told by laptops that are in contact.
CREATE TABLE presence (
  login name NOT NULL DEFAULT session_user,
  fit_id uuid NOT NULL,
  at timestamptz NOT NULL DEFAULT now(),
  PRIMARY KEY (login, fit_id)
);
