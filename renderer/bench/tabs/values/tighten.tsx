import { useFormat } from '../../../display/use-display.ts';
import { useJob } from '../../../jobs/use-job.ts';
import { say } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { Button } from '../../../ui/button.tsx';
import { useFit } from '../../bench-context.tsx';
import { nameInSeat } from '../../crew-names.ts';
import { intervalWriter, tightenLines } from './tighten-words.ts';

/** Which measurement would tighten a value most, a click away. Of the boat's own values: of the paddler in hand. */
export function Tighten({ id, seat }: { id: string; seat: number | null }) {
  const format = useFormat();
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  const inHand = useFit((state) => state.seat);
  const { state, start } = useJob('bestMeasurements');
  const athleteOf = seat ?? inHand;
  const quantity = report.quantities.find((q) => q.id === id && q.seat === seat);
  if (!quantity?.sd || !fit.seats[athleteOf]?.athlete) return null;
  if (state.kind === 'working') return <p className="soft">{say('proposal.working')}</p>;
  const isAnswered =
    state.kind === 'done' && state.input.fit === fit && state.input.goal.athleteOf === athleteOf;
  if (isAnswered) {
    const write = intervalWriter(format, quantity);
    const lines = tightenLines(state.result, { write, athlete: nameInSeat(fit, athleteOf) });
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
    <Button
      look="words"
      aria-label={say('tighten.ask.of', { name: quantityName(id) })}
      onClick={() => start({ fit, report, goal: { quantity: { id, seat }, athleteOf } })}
    >
      {say('tighten.ask')}
    </Button>
  );
}
