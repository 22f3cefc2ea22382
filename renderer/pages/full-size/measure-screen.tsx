import { useState } from 'react';
import { announce } from '../../announce/announce.ts';
import { displaySettings } from '../../display/display-settings.ts';
import { CARD_MM, SCALE_LIMITS, scaleOfBar, withScale } from '../../display/screen-scale.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { RangeField } from '../../ui/fields/range-field.tsx';

/** The bar that a ruler is laid on, pixels. */
const BAR_PX = 400;
/** Scales that the frame of the card runs through, pixels to a millimetre, and its step: a third of a per cent. */
const FRAME = { min: 2, max: 12, step: 0.01 };

/**
 * Says whether this screen has been measured, and measures it: a card is held against a frame that is made as wide as the
 * card, or a ruler is laid on a bar and its length typed. Kept for this screen until somebody measures it again.
 */
export function MeasureScreen(props: {
  screen: string;
  kept: number | null;
  pixelsPerMm: number;
  /** Whether somebody has set frame or length: what has not been measured cannot be kept. */
  tried: boolean;
  onTry: (pixelsPerMm: number | null) => void;
}) {
  const { screen, kept, pixelsPerMm, tried, onTry } = props;
  const [open, setOpen] = useState(kept === null);

  function keep(scale: number | null): void {
    displaySettings.setState(({ screens }) => ({ screens: withScale(screens, screen, scale) }));
    onTry(null);
    setOpen(scale === null);
    announce(say(scale === null ? 'fullsize.forgotten' : 'fullsize.kept'));
  }

  function leave(): void {
    onTry(null);
    setOpen(false);
  }

  return (
    <section className="measure-screen" data-measured={kept !== null || undefined}>
      <p role="status">{say(kept === null ? 'fullsize.unmeasured' : 'fullsize.measured')}</p>
      {open ? (
        <>
          <MeasureMethods pixelsPerMm={pixelsPerMm} onTry={onTry} />
          <p className="row">
            <Button look="chief" disabled={!tried} onClick={() => keep(pixelsPerMm)}>
              {say('fullsize.keep')}
            </Button>
            {kept !== null && <Button onClick={leave}>{say('revisions.cancel')}</Button>}
          </p>
        </>
      ) : (
        <p className="row">
          <Button look="words" onClick={() => setOpen(true)}>
            {say('fullsize.again')}
          </Button>
          <Button look="words" onClick={() => keep(null)}>
            {say('history.remove')}
          </Button>
        </p>
      )}
    </section>
  );
}

interface MeasureProps {
  readonly pixelsPerMm: number;
  readonly onTry: (pixelsPerMm: number) => void;
}

function MeasureMethods(props: MeasureProps) {
  return (
    <div className="measure-methods">
      <CardFrame {...props} />
      <RulerBar {...props} />
    </div>
  );
}

/** A frame of a bank card's size, made wider and narrower until a card held against the glass covers it. */
function CardFrame({ pixelsPerMm, onTry }: MeasureProps) {
  const { width, height, corner } = CARD_MM;
  return (
    <div className="measure-method">
      <h2>{say('fullsize.card')}</h2>
      <p className="soft">{say('fullsize.card.about')}</p>
      <div
        className="card-frame"
        style={{
          width: width * pixelsPerMm,
          height: height * pixelsPerMm,
          borderRadius: corner * pixelsPerMm,
        }}
      />
      <RangeField
        label={say('fullsize.card.width')}
        className="card-width"
        {...FRAME}
        value={pixelsPerMm}
        onChange={onTry}
      />
    </div>
  );
}

/** A bar of so many pixels: what a ruler says of it. */
function RulerBar({ pixelsPerMm, onTry }: MeasureProps) {
  return (
    <div className="measure-method">
      <h2>{say('fullsize.ruler')}</h2>
      <p className="soft">{say('fullsize.ruler.about')}</p>
      <div className="ruler-bar" style={{ width: BAR_PX }} />
      <MeasureField
        label={say('fullsize.ruler.length')}
        kind="length"
        min={BAR_PX / SCALE_LIMITS.most / 1000}
        max={BAR_PX / SCALE_LIMITS.least / 1000}
        value={BAR_PX / pixelsPerMm / 1000}
        onEnter={(metres) => {
          const scale = scaleOfBar(BAR_PX, metres * 1000);
          if (scale !== null) onTry(scale);
        }}
      />
    </div>
  );
}
