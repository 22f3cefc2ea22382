import type { Format } from '../../../../app/language/format.ts';
import type { Band } from '../../../../core/evaluation/finding.ts';
import type { PaddleFit } from '../../../../core/paddle/paddle-fit.ts';
import type { RankedPaddle } from '../../../../core/paddle/rank-stock.ts';
import { say, words } from '../../../language/messages.ts';

/** Which of the two lengths a paddle of the stock is to come near. */
export type WantedBy = 'stature' | 'stance';

/** Blade share that is wanted where no band says one: about what practice has. */
const USUAL_BLADE_SHARE = 0.355;

/** The paddle that is wanted: one of the two lengths, with a blade in the middle of its band. Metres. */
export function wantedPaddle(
  paddle: PaddleFit,
  by: WantedBy,
  bladeBand: Pick<Band, 'min' | 'max'> | null,
): { lengthM: number; bladeLengthM: number } {
  const lengthM = by === 'stature' ? paddle.byStature.lengthM : paddle.byStance.lengthM;
  const { min, max } = bladeBand ?? { min: null, max: null };
  const share = min !== null && max !== null ? (min + max) / 2 : USUAL_BLADE_SHARE;
  return { lengthM, bladeLengthM: lengthM * share };
}

/** Differences smaller than this are none, metres: half of a tape's millimetre. */
const NONE = 0.0005;

/** Why a paddle of the stock stands where it does: how it differs from the wanted one, and what its band says. */
export function reasonText(
  { paddle, longerBy, bladeLongerBy }: RankedPaddle,
  { stature, band, format }: { stature: number; band: Pick<Band, 'min' | 'max'> | null; format: Format },
): string {
  const by = (value: number) => ({ by: format.length(Math.abs(value)) });
  const length =
    Math.abs(longerBy) < NONE
      ? say('paddle.stock.exact')
      : say(longerBy > 0 ? 'paddle.stock.longer' : 'paddle.stock.shorter', by(longerBy));
  const blade =
    Math.abs(bladeLongerBy) < NONE
      ? []
      : [
          say(
            bladeLongerBy > 0 ? 'paddle.stock.blade.longer' : 'paddle.stock.blade.shorter',
            by(bladeLongerBy),
          ),
        ];
  const under = stature - paddle.lengthM;
  const inside = (band?.min ?? under) <= under + NONE && under - NONE <= (band?.max ?? under);
  const verdict = say(inside ? 'paddle.stock.in-band' : 'paddle.stock.off-band');
  const against = say(under < 0 ? 'paddle.stock.over' : 'paddle.stock.under', { ...by(under), verdict });
  return words().row([length, ...blade, against]);
}
