import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Fit } from '../../core/document/fit-schema.ts';
import type { Evaluator } from '../../core/evaluation/evaluator.ts';
import type { Report } from '../../core/evaluation/report.ts';
import { keysOf } from '../../core/units/entries.ts';
import { Autosave, type Keep, type KeepingState } from './autosave.ts';
import { createEditHistory, type EditHistory } from './edit-history.ts';

/** Nudges of the same name closer together than this are one step of undo, milliseconds. */
export const NUDGE_BURST_MS = 800;

/**
 * After a nudge the spreads stay those of before until the keys have rested this long, milliseconds: a full evaluation
 * takes longer than the pause between two repeats of a held key.
 */
export const SETTLE_MS = 200;

/** What the page shows of the fit being edited. Changes at the end of a gesture, never during one. */
export interface FitState extends KeepingState {
  readonly fitId: string;
  readonly fit: Fit;
  readonly report: Report;
  /** Index of the seat being worked on, bow first. */
  readonly seat: number;
  /** Part of the drawing that is lit because it, or a finding that speaks of it, is pointed at or focused. */
  readonly lit: string | null;
  /** A previewed change or a compared revision, drawn as a dashed outline; null for none. */
  readonly ghost: Fit | null;
  /** Names of the steps that undo and redo would take; null when there is none. */
  readonly undoName: string | null;
  readonly redoName: string | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** The name of the current gesture; null when there is none. */
  readonly gestureName: string | null;
}

export type FitEdit = (fit: Fit) => Fit;
export type LiveListener = (fit: Fit, report: Report) => void;

/** One gesture, from press to release. After `end` or `cancel` its calls do nothing. */
export interface Gesture {
  /** Applies `edit` to the fit **as it stood when the gesture began**, and tells the live listeners only. */
  move(edit: FitEdit): Report;
  /** Ends it: one step of undo, the store is told, the draft is saved. */
  end(): void;
  /** Restores the fit from before the gesture exactly. */
  cancel(): void;
}

/** The fit being edited: a store for the page, and the ways to change it. */
export interface FitDocument extends Pick<StoreApi<FitState>, 'getState' | 'getInitialState' | 'subscribe'> {
  /** The one evaluator of the page, which knows bodies and seats already: for ghosts, older revisions and crews too. */
  readonly evaluator: Evaluator;
  beginGesture(name: string): Gesture;
  /** One edit, one step of undo. */
  apply(name: string, edit: FitEdit): void;
  /** A small step; those of the same name within `NUDGE_BURST_MS` of each other are one step of undo. */
  nudge(name: string, edit: FitEdit): void;
  undo(): void;
  redo(): void;
  /** Shows another state of the same fit, already on the disk: the session's steps are forgotten. */
  replace(fit: Fit): void;
  /** The fit and report as drawn this instant, a gesture's moves included. */
  live(): { readonly fit: Fit; readonly report: Report };
  /** Called at every change of the fit as drawn: moves, ends, cancels, undo. Returns a function that stops it. */
  onLive(listener: LiveListener): () => void;
  focusSeat(seat: number): void;
  light(part: string | null): void;
  showGhost(fit: Fit | null): void;
  /** The fit as it stands was kept as a revision at this instant; its draft is no longer needed. */
  keptAsRevision(savedAt: string): void;
  /** Saves at once what is not on the disk yet. The instant of the draft there; null where a revision has taken it. */
  keepNow(): Promise<string | null>;
  /** Closes the document: unsaved changes are saved, listeners are no longer called. */
  close(): Promise<void>;
}

/** Makes a document of an opened fit. `now` is a clock in milliseconds for the nudge bursts. */
export function createFitDocument(options: {
  fitId: string;
  fit: Fit;
  savedAt?: string | null;
  evaluator: Evaluator;
  keep: Keep;
  /** Steps of an earlier visit; left out, there are none. */
  history?: EditHistory;
  now?: () => number;
}): FitDocument {
  const { evaluator, history = createEditHistory(), now = () => performance.now() } = options;
  const listeners = new Set<LiveListener>();
  let live = { fit: options.fit, report: evaluator.evaluate(options.fit) };
  let gesture: Gesture | null = null;
  let lastNudge: { name: string; at: number } | null = null;
  let settling: ReturnType<typeof setTimeout> | null = null;

  const store = createStore<FitState>(() => ({
    fitId: options.fitId,
    ...live,
    seat: Math.max(
      0,
      options.fit.seats.findIndex((seat) => seat.athlete),
    ),
    lit: null,
    ghost: null,
    ...stepsOf(history),
    gestureName: null,
    keeping: 'kept',
    savedAt: options.savedAt ?? null,
    keepProblem: null,
    retrying: false,
  }));
  const keeper = new Autosave({
    fitId: options.fitId,
    savedAt: options.savedAt ?? null,
    keep: options.keep,
    tell: (state) => store.setState(state),
  });

  function show(fit: Fit, report: Report): void {
    live = { fit, report };
    for (const listener of listeners) listener(fit, report);
  }

  /** Computes the spreads that a nudge has left for later. */
  function settle(): void {
    if (settling === null) return;
    dropSettling();
    show(live.fit, evaluator.evaluate(live.fit));
    store.setState(live);
  }

  function dropSettling(): void {
    if (settling !== null) clearTimeout(settling);
    settling = null;
  }

  function settleLater(): void {
    dropSettling();
    settling = setTimeout(settle, SETTLE_MS);
  }

  /** Makes `fit` the state of the document for the page and on the disk. */
  function commit(fit: Fit, report: Report): void {
    show(fit, report);
    const seat = Math.min(store.getState().seat, fit.seats.length - 1);
    store.setState({ ...live, ...stepsOf(history), seat, ghost: null, gestureName: null });
    keeper.keep(fit);
  }

  function commitWhole(fit: Fit): void {
    dropSettling();
    commit(fit, evaluator.evaluate(fit));
  }

  function beginGesture(name: string): Gesture {
    gesture?.end();
    settle();
    lastNudge = null;
    const start = live;
    const over = () => gesture !== mine;
    const mine: Gesture = {
      move(edit) {
        if (over()) return live.report;
        const fit = edit(start.fit);
        show(fit, evaluator.evaluateHolding(fit, start.report));
        return live.report;
      },
      end() {
        if (over()) return;
        gesture = null;
        if (sameFit(live.fit, start.fit)) {
          show(start.fit, start.report);
          store.setState({ gestureName: null });
          return;
        }
        history.record(name, start.fit);
        commit(live.fit, evaluator.evaluate(live.fit));
      },
      cancel() {
        if (over()) return;
        gesture = null;
        show(start.fit, start.report);
        store.setState({ gestureName: null });
      },
    };
    gesture = mine;
    store.setState({ gestureName: name });
    return mine;
  }

  /** Makes one edit; false if it changed nothing. */
  function step(
    name: string,
    edit: FitEdit,
    options: { joinsLast: boolean; settles: 'now' | 'later' },
  ): boolean {
    const before = live.fit;
    const fit = edit(before);
    if (sameFit(fit, before)) return false;
    if (!options.joinsLast) history.record(name, before);
    if (options.settles === 'later') {
      commit(fit, evaluator.evaluateHolding(fit, live.report));
      settleLater();
    } else commitWhole(fit);
    return true;
  }

  return {
    getState: store.getState,
    getInitialState: store.getInitialState,
    subscribe: store.subscribe,
    evaluator,
    beginGesture,
    apply(name, edit) {
      gesture?.end();
      lastNudge = null;
      step(name, edit, { joinsLast: false, settles: 'now' });
    },
    nudge(name, edit) {
      gesture?.end();
      const at = now();
      const joinsLast = lastNudge?.name === name && at - lastNudge.at <= NUDGE_BURST_MS;
      if (step(name, edit, { joinsLast, settles: 'later' })) lastNudge = { name, at };
    },
    undo() {
      if (gesture) return gesture.cancel();
      lastNudge = null;
      const back = history.undo(live.fit);
      if (back) commitWhole(back.fit);
    },
    redo() {
      if (gesture) return;
      lastNudge = null;
      const forward = history.redo(live.fit);
      if (forward) commitWhole(forward.fit);
    },
    replace(fit) {
      gesture?.cancel();
      dropSettling();
      lastNudge = null;
      history.clear();
      show(fit, evaluator.evaluate(fit));
      store.setState({ ...live, ...stepsOf(history), ghost: null });
    },
    live: () => live,
    onLive(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    focusSeat: (seat) => store.setState({ seat }),
    light: (lit) => store.setState({ lit }),
    showGhost: (ghost) => store.setState({ ghost }),
    keptAsRevision: (savedAt) => keeper.keptAsRevision(savedAt),
    keepNow: () => keeper.flush(),
    async close() {
      gesture?.end();
      dropSettling();
      await keeper.flush();
      keeper.stop();
      listeners.clear();
    },
  };
}

/** What undo and redo would do, as the page shows it. */
function stepsOf({ undoName, redoName }: EditHistory) {
  return { undoName, redoName, canUndo: undoName !== null, canRedo: redoName !== null };
}

/** Whether two states of a fit say the same; parts that are the same objects are not looked into. */
function sameFit(a: Fit, b: Fit): boolean {
  if (a === b) return true;
  return keysOf(a).every((key) => a[key] === b[key] || JSON.stringify(a[key]) === JSON.stringify(b[key]));
}
