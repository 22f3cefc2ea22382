import type { Finding } from '../../../../core/evaluation/finding.ts';

/** Findings by what they ask for, each group in the report's order: the most severe first. */
export interface FindingGroups {
  /** Outside its band beyond doubt, or a stop: something is to be done. */
  readonly act: readonly Finding[];
  /** Perhaps outside its band: worth measuring or trying. */
  readonly check: readonly Finding[];
  readonly good: readonly Finding[];
}

/** The findings of one seat and of the whole boat, grouped. */
export function findingGroups(findings: readonly Finding[], seat: number): FindingGroups {
  const mine = findings.filter((finding) => finding.seat === seat || finding.seat === null);
  const of = (...severities: Finding['severity'][]) =>
    mine.filter(({ severity }) => severities.includes(severity));
  return { act: of('stop', 'change'), check: of('check'), good: of('good') };
}
