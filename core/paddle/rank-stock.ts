/** One paddle of the club's stock. Metres. */
export interface StockPaddle {
  readonly name: string;
  /** Grip to tip. */
  readonly lengthM: number;
  /** Throat to tip. */
  readonly bladeLengthM: number;
}

/** A paddle of the stock beside the wanted one: how much longer it is, and its blade; negative is shorter. Metres. */
export interface RankedPaddle<Paddle extends StockPaddle = StockPaddle> {
  readonly paddle: Paddle;
  /** Whole length, against the wanted one. */
  readonly longerBy: number;
  /** Blade, against the wanted one. */
  readonly bladeLongerBy: number;
  /** What the ranking goes by, metres: 0 is the wanted paddle itself. */
  readonly apart: number;
}

/**
 * Weight of a difference in blade length against one in length: the blade's part is buried anyway, and half a
 * centimetre of blade changes less than half a centimetre of shaft (this project's weighing).
 */
const BLADE_WEIGHT = 0.5;

/**
 * The stock with the nearest paddle first: by the difference in length and half of the difference in blade. Equal ones
 * stand in the order of their names, then as they were listed.
 */
export function rankStock<Paddle extends StockPaddle>(
  stock: readonly Paddle[],
  wanted: Pick<StockPaddle, 'lengthM' | 'bladeLengthM'>,
): RankedPaddle<Paddle>[] {
  return stock
    .map((paddle) => {
      const longerBy = paddle.lengthM - wanted.lengthM;
      const bladeLongerBy = paddle.bladeLengthM - wanted.bladeLengthM;
      const apart = Math.abs(longerBy) + BLADE_WEIGHT * Math.abs(bladeLongerBy);
      return { paddle, longerBy, bladeLongerBy, apart };
    })
    .sort((a, b) => nearness(a.apart - b.apart) || compareNames(a.paddle.name, b.paddle.name));
}

/** Differences under a micrometre are rounding of sums of centimetres. */
const ROUNDING_M = 1e-6;

/** A difference that rounding alone has made is none. */
const nearness = (by: number) => (Math.abs(by) < ROUNDING_M ? 0 : by);

/** The same order on every computer, whatever its language. */
function compareNames(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
