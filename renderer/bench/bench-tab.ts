import type { ComponentType } from 'react';
import type { RevisionSummary } from '../../app/contract/records.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { MessageKey } from '../language/messages.ts';
import type { FetchedRevision } from './fetched-revision.ts';
import type { FitTrials } from './use-fit-trials.ts';
import type { Grown } from './use-grown.ts';

/** What the bench knows besides its document: the fit's records, and what the page can do with a revision. */
export interface BenchTabProps {
  readonly fitId: string;
  readonly trials: FitTrials;
  readonly grown: readonly Grown[];
  readonly revisions: readonly RevisionSummary[];
  readonly compared: FetchedRevision | null;
  /** The earlier revision that is looked at in the fit's place; null while the fit itself is worked on. */
  readonly looked: FetchedRevision | null;
  readonly onCompare: (revision: FetchedRevision | null) => void;
  readonly onLook: (revision: FetchedRevision) => void;
  /** Null while an earlier revision is looked at: what would be saved is not what is seen. */
  readonly onSave: (() => void) | null;
}

/** One tab of the margin. Each folder of `bench/tabs` exports one; the margin shows them in their order. */
export interface BenchTab {
  /** The name in the address. */
  readonly id: string;
  /** Place among the tabs, from the left. */
  readonly order: number;
  readonly title: MessageKey;
  readonly Panel: ComponentType<BenchTabProps>;
  /** Left out, the tab is always there. */
  readonly isOffered?: (now: { readonly fit: Fit; readonly grown: readonly Grown[] }) => boolean;
  /** A number behind the title; left out, none. */
  readonly Count?: ComponentType;
}
