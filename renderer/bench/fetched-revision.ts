import type { RevisionSummary } from '../../app/contract/records.ts';
import type { Fit } from '../../core/document/fit-schema.ts';

/** A revision fetched from the store. */
export interface FetchedRevision {
  readonly revision: RevisionSummary;
  readonly fit: Fit;
}
