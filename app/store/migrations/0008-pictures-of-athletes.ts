/**
 * A photograph of a boat may show an athlete in it: whose it is, of which fit, and what was marked in it and read off it. It goes
 * with the athlete.
 */
export const picturesOfAthletes = `
ALTER TABLE boat_photos ADD COLUMN athlete_id TEXT;
ALTER TABLE boat_photos ADD COLUMN fit_id TEXT;
ALTER TABLE boat_photos ADD COLUMN study TEXT CHECK (study IS NULL OR json_valid(study));
CREATE INDEX boat_photos_by_athlete ON boat_photos (athlete_id, added_at, id);
`;
