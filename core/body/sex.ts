/** The survey's tables: it measured women and men separately. */
export const SEXES = ['female', 'male'] as const;
/** A sex that the survey has a table of. */
export type Sex = (typeof SEXES)[number];

/** What an athlete states: one table, or neither. Unspecified takes the mean of both tables. */
export type StatedSex = Sex | 'unspecified';

/** The tables for a stated sex: one, or both with equal weight. */
export function tablesOf(sex: StatedSex): readonly Sex[] {
  return sex === 'unspecified' ? SEXES : [sex];
}
