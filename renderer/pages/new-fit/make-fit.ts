import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { type Athlete, athleteSchema } from '../../../core/document/athlete-schema.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { forFit } from '../../../core/document/consent.ts';
import { FIT_FORMAT, type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import type { Side } from '../../../core/frame/mirror.ts';
import { firstSetting } from '../../../core/optimise/first-setting.ts';
import { levelledFit } from '../../../core/optimise/levelled-fit.ts';

/** Who begins in one seat. */
export interface Starter {
  readonly athlete: Athlete | null;
  readonly side: Side;
  /** The athlete's own fit in a single, which a seat in a crew begins from; none where left out. */
  readonly single?: Fit | null;
}

/** The body that an empty seat's fittings are set out for until somebody takes it: about the mean adult. */
function nobody(side: Side): Athlete {
  return athleteSchema.parse({ name: '–', sex: 'unspecified', side, statureM: 1.72, massKg: 72 });
}

/** A fit of these starters in this boat, every fitting in its first setting: a crew's seats from their paddlers' own singles, the boat level. */
export function makeFit({
  name,
  boat,
  starters,
}: {
  name: string;
  boat: Boat;
  starters: readonly Starter[];
}): Fit {
  const seats = boat.seats.map(({ stationM }, index) => {
    const { athlete, side, single }: Starter = starters[index] ?? { athlete: null, side: 'left' };
    const body = bodyOfAthlete(athlete ?? nobody(side));
    const own = boat.seats.length > 1 ? single?.seats[0] : undefined;
    const setting = firstSetting({
      body,
      boat,
      stationX: stationM,
      side,
      ...(own && { single: own }),
      ...(athlete && { own: athlete }),
    });
    return { ...setting, athlete: athlete && forFit(athlete), bands: athlete?.bands ?? [] };
  });
  return levelledFit(fitSchema.parse({ format: FIT_FORMAT, name, boat, seats }));
}
