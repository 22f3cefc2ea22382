-- Who may enter, and whom each person looks after. Every computer of a person has a login role of its own.

CREATE TABLE club (
  one boolean PRIMARY KEY DEFAULT true CHECK (one),
  id uuid NOT NULL DEFAULT gen_random_uuid(),
  name text NOT NULL,
  made_at timestamptz NOT NULL DEFAULT now()
);

CREATE TYPE person_role AS ENUM ('head-coach', 'coach', 'boatbuilder', 'viewer');

CREATE TABLE people (
  id uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  name text NOT NULL,
  role person_role NOT NULL
);

CREATE TABLE groups (
  id uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  name text NOT NULL UNIQUE,
  -- Holds every athlete of the club, those to come too.
  everyone boolean NOT NULL DEFAULT false
);

CREATE TABLE group_people (
  group_id uuid NOT NULL REFERENCES groups (id) ON DELETE CASCADE,
  person_id uuid NOT NULL REFERENCES people (id) ON DELETE CASCADE,
  PRIMARY KEY (group_id, person_id)
);

CREATE TABLE group_athletes (
  group_id uuid NOT NULL REFERENCES groups (id) ON DELETE CASCADE,
  athlete_id uuid NOT NULL,
  PRIMARY KEY (group_id, athlete_id)
);

-- `login` is the name of a database role. `store` is the laptop that last called with it.
CREATE TABLE logins (
  login name PRIMARY KEY,
  person_id uuid NOT NULL REFERENCES people (id) ON DELETE CASCADE,
  invited_at timestamptz NOT NULL DEFAULT now(),
  accepted_at timestamptz,
  store text,
  last_contact timestamptz
);

-- Who read data of athletes, or took a copy of them along. The program writes it; nobody changes it.
CREATE TABLE audit (
  n bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  at timestamptz NOT NULL DEFAULT now(),
  login name NOT NULL DEFAULT session_user,
  what text NOT NULL CHECK (what IN ('read', 'export', 'backup', 'erase')),
  athletes uuid[] NOT NULL
);
