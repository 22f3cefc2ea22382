-- What a person may write is found out once for each statement too, not once for each row. Who may write what stays as it was.

CREATE FUNCTION my_kinds() RETURNS text[] STABLE SECURITY DEFINER SET search_path = kneelwright, pg_temp LANGUAGE sql AS $$
  SELECT ARRAY(SELECT kind FROM unnest(ARRAY['athlete', 'boat', 'paddle', 'photo', 'fit', 'trial']) AS kind WHERE writes_kind(kind))
$$;

ALTER POLICY add ON records WITH CHECK (kind = ANY ((SELECT my_kinds())::text[]));
ALTER POLICY change ON records USING (kind = ANY ((SELECT my_kinds())::text[])) WITH CHECK (kind = ANY ((SELECT my_kinds())::text[]));

ALTER POLICY add ON fields WITH CHECK (kind = ANY ((SELECT my_kinds())::text[])
  AND ((SELECT my_role()) <> 'boatbuilder' OR is_setting(kind, path))
  AND EXISTS (SELECT FROM records WHERE records.kind = fields.kind AND records.id = fields.id));
ALTER POLICY change ON fields USING (kind = ANY ((SELECT my_kinds())::text[])
  AND ((SELECT my_role()) <> 'boatbuilder' OR is_setting(kind, path))
  AND EXISTS (SELECT FROM records WHERE records.kind = fields.kind AND records.id = fields.id))
WITH CHECK (kind = ANY ((SELECT my_kinds())::text[])
  AND ((SELECT my_role()) <> 'boatbuilder' OR is_setting(kind, path))
  AND EXISTS (SELECT FROM records WHERE records.kind = fields.kind AND records.id = fields.id));
DROP FUNCTION writes_field(text, uuid, text);

ALTER POLICY add ON revisions WITH CHECK ('fit' = ANY ((SELECT my_kinds())::text[])
  AND EXISTS (SELECT FROM records WHERE kind = 'fit' AND records.id = fit_id));
ALTER POLICY add ON revision_athletes WITH CHECK ('fit' = ANY ((SELECT my_kinds())::text[])
  AND EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id AND made_by = (SELECT me())));
ALTER POLICY add ON revision_words WITH CHECK ('fit' = ANY ((SELECT my_kinds())::text[])
  AND EXISTS (SELECT FROM revisions WHERE revisions.id = revision_id AND made_by = (SELECT me())));
ALTER POLICY add ON photographs WITH CHECK ('photo' = ANY ((SELECT my_kinds())::text[]));
