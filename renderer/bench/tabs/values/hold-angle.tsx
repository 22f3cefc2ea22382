import { type Pins, pinsSchema } from '../../../../core/document/seat-schema.ts';
import { toDegrees } from '../../../../core/units/angle.ts';
import { say } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { Button } from '../../../ui/button.tsx';
import { limitsOf } from '../../../ui/fields/limits-of.ts';
import { MeasureField } from '../../../ui/fields/measure-field.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';

type Pin = keyof Pins;

/** The angles that a coach may hold at a measured value, by the quantity they appear as. */
const PIN_OF: Readonly<Record<string, Pin>> = {
  trunkPitch: 'trunkPitchDeg',
  trunkRoll: 'trunkRollDeg',
  pelvisYaw: 'pelvisYawDeg',
  thighPitch: 'thighPitchDeg',
};

/** Whether a quantity is an angle that may be held. */
export function isHoldable(id: string): boolean {
  return id in PIN_OF;
}

/** Holds an angle where it is, or where it was measured; the rest of the figure settles around it. */
export function HoldAngle({ id, seat, value }: { id: string; seat: number; value: number }) {
  const document = useDocument();
  const pin = PIN_OF[id]!;
  const held = useFit(({ fit }) => fit.seats[seat]?.pins[pin]);
  const what = quantityName(id);
  const set = (step: 'step.pin' | 'step.unpin', degrees: number | undefined) =>
    document.apply(say(step, { what }), (fit) => ({
      ...fit,
      seats: fit.seats.map((at, index) => {
        if (index !== seat) return at;
        const { [pin]: _, ...pins } = at.pins;
        return { ...at, pins: degrees === undefined ? pins : { ...pins, [pin]: degrees } };
      }),
    }));
  return (
    <div className="hold">
      <Button
        aria-pressed={held !== undefined}
        onClick={() =>
          held === undefined
            ? set('step.pin', Math.round(toDegrees(value) * 10) / 10)
            : set('step.unpin', undefined)
        }
      >
        {say('values.hold')}
      </Button>
      {held !== undefined && (
        <MeasureField
          label={say('values.hold.at')}
          kind="angle"
          stepped
          value={held}
          {...limitsOf(pinsSchema.shape[pin].unwrap())}
          onEnter={(degrees) => set('step.pin', degrees)}
        />
      )}
    </div>
  );
}
