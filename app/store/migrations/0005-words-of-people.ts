/** Athletes are found by the reasons of their limits and bands too, paddles by their notes. */
export const wordsOfPeople = `
UPDATE athletes SET search = trim(search_text(
  name,
  coalesce((SELECT group_concat(json_extract(one.value, '$.reason'), ' ') FROM json_each(athletes.athlete, '$.limits') AS one), ''),
  coalesce((SELECT group_concat(json_extract(one.value, '$.reason'), ' ') FROM json_each(athletes.athlete, '$.bands') AS one), '')
));
UPDATE paddles SET search = trim(search_text(name, coalesce(json_extract(paddle, '$.note'), '')));
`;
