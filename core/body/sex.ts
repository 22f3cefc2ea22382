/** A survey table: the survey measured men and women apart. */
export const SEXES = ['female', 'male'] as const;
/** A sex that the survey has a table of. */
export type Sex = (typeof SEXES)[number];

/** What an athlete may say: a table, or nothing, in which case the mean of both tables is used. */
export type StatedSex = Sex | 'unspecified';

/** The tables that a statement asks for: one, or both with equal weight. */
export function tablesOf(sex: StatedSex): readonly Sex[] {
  return sex === 'unspecified' ? SEXES : [sex];
}
