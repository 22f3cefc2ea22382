/** SQL for the athlete in a seat of a row of `revision_words`; the indexes below and the timeline use the same text. */
export const athleteInSeat = (seat: number) =>
  `(CASE WHEN json_valid(athlete_ids) THEN athlete_ids ->> ${seat} END)`;

/** Indexes of the seats that a boat can have. */
export const SEATS = [0, 1, 2, 3] as const;

/** Beside each revision when it was kept, and an index for each seat: the timeline of one athlete reads that athlete's rows only. */
export const whoKneltWhen = `
ALTER TABLE revision_words ADD COLUMN saved_at TEXT;
DROP TRIGGER revision_words_are_never_changed;
UPDATE revision_words SET saved_at = (SELECT saved_at FROM revisions WHERE id = revision_id);
CREATE TRIGGER revision_words_are_never_changed BEFORE UPDATE ON revision_words
WHEN OLD.revision_id NOT IN (SELECT revision_id FROM erasing)
BEGIN
  SELECT RAISE(ABORT, 'revisions are never changed');
END;
${SEATS.map(
  (seat) =>
    `CREATE INDEX revisions_by_athlete_${seat} ON revision_words (${athleteInSeat(seat)}, saved_at) WHERE ${athleteInSeat(seat)} IS NOT NULL;`,
).join('\n')}
`;
