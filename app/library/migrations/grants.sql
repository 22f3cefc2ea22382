-- What members may touch at all; the policies say which rows. Run after every migration.
GRANT USAGE ON SCHEMA kneelwright TO kneelwright_member;
REVOKE ALL ON ALL TABLES IN SCHEMA kneelwright FROM kneelwright_member, PUBLIC;
GRANT USAGE ON SEQUENCE change_number TO kneelwright_member;
GRANT SELECT, INSERT, UPDATE ON records, fields TO kneelwright_member;
-- Never UPDATE or DELETE: a revision stays what it was.
GRANT SELECT, INSERT ON revisions, revision_athletes, revision_words, photographs, audit TO kneelwright_member;
GRANT SELECT ON tombstones TO kneelwright_member;
GRANT SELECT, INSERT ON tombstones_seen TO kneelwright_member;
GRANT SELECT, INSERT, UPDATE, DELETE ON presence TO kneelwright_member;
REVOKE EXECUTE ON ALL FUNCTIONS IN SCHEMA kneelwright FROM PUBLIC;
GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA kneelwright TO kneelwright_member;
REVOKE EXECUTE ON FUNCTION purge(uuid), names_of(uuid) FROM kneelwright_member;
