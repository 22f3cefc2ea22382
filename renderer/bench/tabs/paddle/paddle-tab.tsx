import { say } from '../../../language/messages.ts';
import { useFit } from '../../bench-context.tsx';
import { PaddleHeld } from './paddle-held.tsx';
import { PaddleLength } from './paddle-length.tsx';
import { PaddleStock } from './paddle-stock.tsx';
import { usePaddleReader } from './use-paddle.ts';
import './paddle.css';

/** The tab of the margin for the paddle: both lengths, how it is held, and the club's nearest ones. */
export function PaddleTab() {
  const occupied = useFit(({ fit, seat }) => fit.seats[seat]?.athlete != null);
  return occupied ? <SeatPaddle /> : <p className="soft">{say('drawing.nobody')}</p>;
}

function SeatPaddle() {
  const read = usePaddleReader();
  const floats = useFit(({ report }) => report.afloat.ready.kind === 'afloat');
  if (!floats) return <p className="soft">{say('drawing.strip.not-afloat')}</p>;
  return (
    <div className="paddle-tab">
      <h2 className="lettering">{say('measure.paddle.lengthM')}</h2>
      <PaddleLength read={read} />
      <h2 className="lettering">{say('paddle.held')}</h2>
      <PaddleHeld read={read} />
      <h2 className="lettering">{say('paddle.stock')}</h2>
      <PaddleStock read={read} />
    </div>
  );
}
