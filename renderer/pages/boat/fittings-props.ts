import type { BoatEntries } from './boat-entries.ts';

/** What every section of a boat's form is given. */
export interface FittingsProps {
  readonly entries: BoatEntries;
  readonly problems: Readonly<Record<string, string>>;
  readonly onChange: (part: Partial<BoatEntries>) => void;
}
