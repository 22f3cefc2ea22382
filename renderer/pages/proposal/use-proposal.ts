import { useEffect, useRef, useState } from 'react';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import { withCoordinate } from '../../../core/fit/fitting-coordinate.ts';
import type { FoundProposal, ProposalAnswer, ProposalQuestion } from './proposal-worker.ts';

/** How far a proposal has come. */
export type ProposalState =
  | { readonly kind: 'none' }
  | { readonly kind: 'working'; readonly tried: number }
  /** Of exactly this fit: any other has a proposal of its own. */
  | { readonly kind: 'found'; readonly of: Fit; readonly found: FoundProposal };

export interface Proposing {
  readonly state: ProposalState;
  start(question: ProposalQuestion): void;
  /** Ends the work at once, or forgets what was found. */
  stop(): void;
}

/** Works out a proposal in a worker of its own, which ends with the work, on `stop`, and with the page. */
export function useProposal(onFound?: (of: Fit, found: FoundProposal) => void): Proposing {
  const worker = useRef<Worker | null>(null);
  const [state, setState] = useState<ProposalState>({ kind: 'none' });
  const told = useRef(onFound);
  told.current = onFound;

  function end(): void {
    worker.current?.terminate();
    worker.current = null;
  }

  function start(question: ProposalQuestion): void {
    end();
    setState({ kind: 'working', tried: 0 });
    const started = new Worker(new URL('./proposal-worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<ProposalAnswer>) => {
      if (data.kind === 'tried') return setState({ kind: 'working', tried: data.count });
      end();
      setState({ kind: 'found', of: question.fit, found: data.found });
      told.current?.(question.fit, data.found);
    };
    worker.current = started;
    started.postMessage(question);
  }

  function stop(): void {
    end();
    setState({ kind: 'none' });
  }

  useEffect(() => () => worker.current?.terminate(), []);
  return { state, start, stop };
}

/** A fit with a proposal's moves made; what they do not touch stays the same object. */
export function withMoves(fit: Fit, { moves }: Pick<FoundProposal, 'moves'>): Fit {
  return moves.reduce((now, move) => withCoordinate(now, move, move.to), fit);
}
