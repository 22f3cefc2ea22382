import { useCallback, useEffect, useState } from 'react';
import type { ExportInput } from '../../app/contract/paper-export.ts';
import type { OpenedFit, RevisionSummary } from '../../app/contract/records.ts';
import type { CallError } from '../../app/contract/result.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { revisionMark } from '../../core/document/revision-mark.ts';
import { call } from '../client/client.ts';
import { draftsSettled } from './keep-draft.ts';

/** A state of a fit: as it stands now, or as one of its revisions had it. */
export interface FitMoment {
  readonly fit: Fit;
  /** What paper shows: number (null if no revision has this state yet), name, when it was saved. */
  readonly revision: ExportInput['revision'];
  /** Why it was made, in the coach's words. */
  readonly reason: string;
}

/** Names the state that stands now; any other key is a revision's id. */
export const PRESENT = 'present';

/** A state that can be looked at: its key, and its revision (null for a draft). */
export interface NamedMoment {
  readonly key: string;
  readonly revision: RevisionSummary | null;
}

/** States of a fit, the present first, then every revision that is not the present, newest first. */
export function momentsOf({ draftSavedAt, revisions }: OpenedFit): NamedMoment[] {
  const present = draftSavedAt === null ? (revisions[0] ?? null) : null;
  return [
    { key: PRESENT, revision: present },
    ...revisions
      .filter((revision) => revision !== present)
      .map((revision) => ({ key: revision.id, revision })),
  ];
}

interface Fetched<T> {
  readonly value: T | null;
  readonly error: CallError | null;
}

/** A fit with its revisions, opened after every draft sent off so far has been kept. */
export function useOpenedFit(fitId: string): Fetched<OpenedFit> & {
  readonly reload: () => void;
  /** Counts the answers. */
  readonly answered: number;
} {
  const [answer, setAnswer] = useState<Fetched<OpenedFit> & { answered: number }>({
    value: null,
    error: null,
    answered: 0,
  });
  const [round, setRound] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `round` asks again
  useEffect(() => {
    let wanted = true;
    void draftsSettled()
      .then(() => call('fits.open', { id: fitId }))
      .then((result) => {
        if (wanted) setAnswer(({ answered }) => ({ ...fetched(result), answered: answered + 1 }));
      });
    return () => {
      wanted = false;
    };
  }, [fitId, round]);
  const reload = useCallback(() => setRound((n) => n + 1), []);
  return { ...answer, reload };
}

function fetched<T>(result: { ok: true; value: T } | { ok: false; error: CallError }): Fetched<T> {
  return result.ok ? { value: result.value, error: null } : { value: null, error: result.error };
}

/** A fetched state with the key it was fetched for: undefined until the first has come. */
export type KeyedMoment = Fetched<FitMoment> & { readonly key: string | null | undefined };

/** The state of a fit that a key names; null for no key. Until it has been fetched the one before it stays. */
export function useFitMoment(opened: OpenedFit, key: string | null): KeyedMoment {
  const [answer, setAnswer] = useState<KeyedMoment>({ key: undefined, value: null, error: null });
  useEffect(() => {
    let wanted = true;
    if (key === null || key === PRESENT) {
      setAnswer({ key, value: key === null ? null : presentOf(opened), error: null });
      return;
    }
    void call('revisions.open', { id: key }).then((result) => {
      if (!wanted) return;
      if (!result.ok) return setAnswer({ key, value: null, error: result.error });
      const { fit, revision } = result.value;
      setAnswer({ key, value: savedState(fit, revision), error: null });
    });
    return () => {
      wanted = false;
    };
  }, [opened, key]);
  return answer;
}

function savedState(fit: Fit, { id, number, name, savedAt, reason }: RevisionSummary): FitMoment {
  return { fit, revision: { number, name, mark: revisionMark(id), keptAt: savedAt }, reason };
}

/** The present state: the draft if there is one, else the newest revision. A state that was never saved is dated now. */
export function presentOf({ fit, draftSavedAt, revisions }: OpenedFit): FitMoment {
  const [newest] = revisions;
  if (draftSavedAt === null && newest) {
    return savedState(fit, newest);
  }
  return {
    fit,
    revision: { number: null, name: '', mark: '', keptAt: draftSavedAt ?? new Date().toISOString() },
    reason: '',
  };
}
