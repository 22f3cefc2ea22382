import { useEffect, useRef, useState } from 'react';
import { quantityName } from '../../../core/findings/sentences.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { useFit } from '../bench/bench-context.tsx';
import { inSentence } from '../bench/quantity-text.ts';
import { nameInSeat } from '../crew/crew-names.ts';
import { intervalWriter, tightenLines } from './tighten-words.ts';
import type { TightenAnswer, TightenQuestion } from './tighten-worker.ts';

type State =
  | { readonly kind: 'unasked' }
  | { readonly kind: 'working' }
  | { readonly kind: 'answered'; readonly of: Fit; readonly answer: TightenAnswer };

/** Which measurement would tighten a value most, a click away. Of the boat's own values: of the paddler in hand. */
export function Tighten({ id, seat }: { id: string; seat: number | null }) {
  const format = useFormat();
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  const inHand = useFit((state) => state.seat);
  const { state, ask } = useTighten();
  const athleteOf = seat ?? inHand;
  const quantity = report.quantities.find((q) => q.id === id && q.seat === seat);
  if (!quantity?.sd || !fit.seats[athleteOf]?.athlete) return null;
  if (state.kind === 'working') return <p className="soft">{say('tighten.working')}</p>;
  if (state.kind === 'answered' && state.of === fit) {
    const write = intervalWriter(format, quantity);
    const lines = tightenLines(state.answer, { write, athlete: nameInSeat(fit, athleteOf) });
    return (
      <div className="tighten" role="status">
        {lines.length === 0 ? (
          <p className="soft">{say('tighten.none')}</p>
        ) : (
          <>
            <ul>
              {lines.map(({ id: line, what, change }) => (
                <li key={line} data-measure={line}>
                  <span>{what}</span> <span className="tighten-change">{change}</span>
                </li>
              ))}
            </ul>
            <p className="soft">{say('tighten.about')}</p>
          </>
        )}
      </div>
    );
  }
  return (
    <button
      type="button"
      className="button words"
      aria-label={say('tighten.ask.of', { name: inSentence(quantityName(id)) })}
      onClick={() => ask({ fit, report, goal: { quantity: { id, seat }, athleteOf } })}
    >
      {say('tighten.ask')}
    </button>
  );
}

function useTighten() {
  const worker = useRef<Worker | null>(null);
  const [state, setState] = useState<State>({ kind: 'unasked' });

  function ask(question: TightenQuestion): void {
    worker.current?.terminate();
    const started = new Worker(new URL('./tighten-worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<TightenAnswer>) => {
      started.terminate();
      setState({ kind: 'answered', of: question.fit, answer: data });
    };
    worker.current = started;
    setState({ kind: 'working' });
    started.postMessage(question);
  }

  useEffect(() => () => worker.current?.terminate(), []);
  return { state, ask };
}
