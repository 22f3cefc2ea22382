import { useState } from 'react';
import type { PaddleRecord } from '../../../../app/contract/records.ts';
import type { Paddle } from '../../../../core/document/seat-schema.ts';
import type { QuantityId } from '../../../../core/evaluation/quantities.ts';
import { rankStock } from '../../../../core/paddle/rank-stock.ts';
import { entriesOf } from '../../../../core/units/entries.ts';
import { announce } from '../../../announce/announce.ts';
import { useCall } from '../../../client/use-call.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { hrefOf } from '../../../route/route.ts';
import { Button } from '../../../ui/button.tsx';
import { ErrorMessage } from '../../../ui/error-message.tsx';
import { ChoiceField } from '../../../ui/fields/choice-field.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { withPaddle } from './paddle-held.tsx';
import { reasonText, type WantedBy, wantedPaddle } from './stock-words.ts';
import type { PaddleReader } from './use-paddle.ts';

/** How many of the nearest are shown. */
const NEAREST = 5;

type StockPaddle = PaddleRecord['paddle'];

/** What of a stock paddle a fit takes over. */
const taken = ({ lengthM, bladeLengthM, bladeAngleDeg, massKg }: StockPaddle): Partial<Paddle> => ({
  lengthM,
  bladeLengthM,
  bladeAngleDeg,
  massKg,
});

/** The club's paddles that come nearest to a wanted one, with reasons; one is applied in one step. */
export function PaddleStock({ read }: { read: PaddleReader }) {
  const format = useFormat();
  const [by, setBy] = useState<WantedBy>('stature');
  const seat = useFit((state) => state.seat);
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  const stock = useCall('paddles.list', {});
  const paddle = read(fit, report);
  const bandOf = (id: QuantityId) =>
    report.findings.find((f) => f.quantity === id && f.seat === seat)?.band ?? null;
  if (stock.error) return <ErrorMessage error={stock.error} onRetry={stock.reload} />;
  const all = <AllPaddles />;
  if (!stock.value || !paddle) return all;
  if (stock.value.length === 0) {
    return (
      <>
        <p className="soft">{say('paddle.stock.none')}</p>
        {all}
      </>
    );
  }
  const wanted = wantedPaddle(paddle, by, bandOf('bladeShare'));
  const ranked = rankStock(
    stock.value.map((record) => record.paddle),
    wanted,
  ).slice(0, NEAREST);
  const { stature } = report.seats[seat]!.body;
  const words = { stature, band: bandOf('paddleUnderStature'), format };
  return (
    <>
      <ChoiceField
        label={say('paddle.stock.wanted')}
        value={by}
        onChange={setBy}
        options={(['stature', 'stance'] as const).map((value) => ({
          value,
          name: say(`paddle.stock.wanted.${value}`),
        }))}
      />
      <p className="soft">
        {say('paddle.stock.about', {
          length: format.length(wanted.lengthM),
          blade: format.length(wanted.bladeLengthM),
        })}
      </p>
      <ol className="paddle-stock">
        {ranked.map((one) => (
          <li key={one.paddle.id} data-paddle={one.paddle.name}>
            <StockLine paddle={one.paddle} reason={reasonText(one, words)} />
          </li>
        ))}
      </ol>
      {all}
    </>
  );
}

function StockLine({ paddle, reason }: { paddle: StockPaddle; reason: string }) {
  const document = useDocument();
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const { name } = paddle;
  const inHand = useFit(({ fit }) => {
    const held = fit.seats[seat]!.paddle;
    return entriesOf(taken(paddle)).every(([key, value]) => held[key] === value);
  });

  function take(): void {
    document.apply(say('paddle.stock.step', { name }), (fit) => withPaddle(fit, seat, taken(paddle)));
    announce(say('paddle.stock.taken', { name }));
  }

  return (
    <>
      <span className="paddle-stock-name">
        <strong>{name}</strong>{' '}
        {say('paddle.stock.line', {
          length: format.length(paddle.lengthM),
          blade: format.length(paddle.bladeLengthM),
        })}
      </span>
      {inHand ? (
        <span className="soft">{say('conflicts.counts')}</span>
      ) : (
        <Button look="words" aria-label={say('paddle.stock.take.of', { name })} onClick={take}>
          {say('notes.take')}
        </Button>
      )}
      <span className="soft paddle-stock-reason">{reason}</span>
    </>
  );
}

function AllPaddles() {
  return (
    <p>
      <a className="row-link" href={hrefOf({ page: 'paddles' })}>
        {say('paddle.stock.all')}
      </a>
    </p>
  );
}
