import { type ClearDifference, clearDifferences } from '../../../core/photograph/clear-differences.ts';
import type { SeenPosture } from '../../../core/photograph/posture-from-marks.ts';
import type { ReadPicture } from '../../../core/photograph/read-picture.ts';
import type { StanceAngle } from '../../../core/posture/stance.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

/** The most differences that are said; the table has all of them. */
const MOST = 4;

/** What a larger and a smaller angle are called. */
const SENSES: Readonly<Record<StanceAngle, readonly [more: string, less: string]>> = {
  frontKnee: ['straight', 'bent'],
  kneelingKnee: ['straight', 'bent'],
  kneelingHip: ['open', 'bent'],
  frontHip: ['open', 'bent'],
  rearAnkle: ['open', 'bent'],
  frontAnkle: ['open', 'bent'],
  trunkPitch: ['forward', 'upright'],
  trunkRoll: ['paddling', 'off'],
  pelvisYaw: ['kneeling', 'off'],
  thighPitch: ['forward', 'back'],
  thighRoll: ['kneeling', 'off'],
};

/** How the athlete kneels otherwise than planned, in words: what is clear, the largest first. */
export function DifferenceWords(props: { plan: NonNullable<ReadPicture['plan']>; posture: SeenPosture }) {
  const clear = clearDifferences(props.plan.angles, props.posture.angles, props.posture.sd);
  if (clear.length === 0) return <p>{say('photograph.difference.none')}</p>;
  return (
    <div>
      <p>{say('photograph.difference.head')}</p>
      <ul className="photograph-differences">
        {clear.slice(0, MOST).map((one) => (
          <Difference key={one.angle} {...one} />
        ))}
      </ul>
    </div>
  );
}

function Difference({ angle, by, sd }: ClearDifference) {
  const format = useFormat();
  return (
    <li>
      {say('photograph.difference', {
        angle: say(`photograph.angle.${angle}`),
        sense: SENSES[angle][by > 0 ? 0 : 1],
        by: format.degrees(Math.abs(toDegrees(by))),
        doubt: format.degrees(toDegrees(1.96 * sd)),
      })}
    </li>
  );
}
