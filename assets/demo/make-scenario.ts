/**
 * Writes scenario.json: an invented club, its people and boats, and settings proposed by the program itself. Run it with
 * `node assets/demo/make-scenario.ts` after a change of the core that should show in the demo. Nobody here exists.
 */
import { writeFileSync } from 'node:fs';
import { readHull } from '../../app/demo/scenario.ts';
import {
  type Athlete,
  athleteSchema,
  type Boat,
  bodyOfAthlete,
  boatSchema,
  createEvaluator,
  FIT_FORMAT,
  type Fit,
  firstSetting,
  fitSchema,
  propose,
  type Seat,
} from '../../core/index.ts';
import { levelledFit } from '../../core/optimise/levelled-fit.ts';

const assets = new URL('..', import.meta.url).pathname;

/** An invented guardian's consents. */
const GUARDIAN = {
  bodyData: { by: 'A parent', on: '2026-09-14' },
  photographs: { by: 'A parent', on: '2026-09-14' },
};

const people = [
  { name: 'Ylva Tornqvarn', sex: 'female', side: 'left', statureM: 1.71, massKg: 64, bornOn: '1999-03-14', tape: { kneeHeightSitting: 0.528, buttockKneeLength: 0.604, shoulderHeight: 1.405, footLength: 0.252 } },
  { name: 'Bohuš Křivolák', sex: 'male', side: 'right', statureM: 1.84, massKg: 83, bornOn: '1996-09-02', tape: { kneeHeightSitting: 0.575, armSpan: 1.91 } },
  { name: 'Zofia Łęgowianka', sex: 'female', side: 'right', statureM: 1.63, massKg: 57, bornOn: '2001-06-21', tape: {} },
  { name: 'Мирослав Вербинчук', sex: 'male', side: 'left', statureM: 1.78, massKg: 76, bornOn: '1998-01-30', tape: { kneeHeightSitting: 0.558 } },
  { name: 'Νεφέλη Ρεματάκη', sex: 'female', side: 'left', statureM: 1.52, massKg: 44, bornOn: '2012-11-05', consent: GUARDIAN, tape: { kneeHeightSitting: 0.472, buttockKneeLength: 0.53, kneelingHeight: 1.12, footLength: 0.229 } },
  { name: 'Tomé Açoreiro', sex: 'male', side: 'right', statureM: 1.6, massKg: 51, bornOn: '2011-04-17', tape: { kneeHeightSitting: 0.5, footLength: 0.243 } },
] as const;

const athletes: Athlete[] = people.map(({ tape, ...who }) =>
  athleteSchema.parse({
    ...who,
    measuredOn: '2026-09-28',
    tape: Object.fromEntries(
      Object.entries(tape).map(([name, valueM]) => [name, { valueM, sdM: 0.004, takenOn: '2026-09-28' }]),
    ),
  }),
);

/** What the two juniors measured on earlier days. */
const earlier = (takenOn: string, statureM: number, massKg: number) => ({ takenOn, statureM, massKg, tape: {} });
const measurings = {
  'Νεφέλη Ρεματάκη': [
    earlier('2025-04-07', 1.44, 37),
    earlier('2025-09-29', 1.47, 39.5),
    earlier('2026-04-06', 1.5, 42),
  ],
  'Tomé Açoreiro': [earlier('2025-09-29', 1.54, 46)],
};

const stock = {
  pads: [
    { name: 'Low pad', count: 1, lengthM: 0.24, widthM: 0.15, heightM: 0.1, recessDepthM: 0.02, foamM: 0.01, foamGiveM: 0.008 },
    { name: 'High pad', count: 2, lengthM: 0.26, widthM: 0.16, heightM: 0.14, recessDepthM: 0.022, foamM: 0.015, foamGiveM: 0.01 },
  ],
  rests: [{ name: 'Plain rest', count: 2, widthM: 0.14, heightM: 0.09, tiltDeg: 60, foamM: 0.01 }],
};

/** Boards lie within the hull over their whole length, 8 mm thick; seats are spread evenly about mid-length. */
const shells = [
  { name: 'No. 4, single', boatClass: 'C1', massKg: 14.2, hullFile: 'single.csv', seats: [0], floor: [0.05, 0.22, -0.9, 0.8] },
  { name: 'Broad single', boatClass: 'none', massKg: 19, hullFile: 'training.csv', seats: [0], floor: [0.03, 0.36, -0.9, 0.8] },
  { name: 'No. 7, pair', boatClass: 'C2', massKg: 20.4, hullFile: 'pair.csv', seats: [0.75, -0.75], floor: [0.06, 0.22, -1.65, 1.55] },
  { name: 'No. 9, four', boatClass: 'C4', massKg: 31, hullFile: 'four.csv', seats: [2.1, 0.7, -0.7, -2.1], floor: [0.07, 0.2, -3, 2.9] },
] as const;

const boats: (Boat & { hullFile: string })[] = shells.map(({ hullFile, floor, seats, ...boat }) => ({
  ...boatSchema.parse({
    ...boat,
    hull: readHull(assets, hullFile),
    floorboard: { heightM: floor[0], widthM: floor[1], aftEndXM: floor[2], foreEndXM: floor[3] },
    hardware: { padHolePitchM: 0.01, restHolePitchM: 0.01 },
    seats: seats.map((stationM) => ({ stationM })),
    ...(boat.boatClass === 'C1' ? { stock } : {}),
  }),
  hullFile,
}));

const evaluator = createEvaluator();

function proposed(name: string, boatName: string, crew: readonly string[]): Fit {
  const { hullFile: _, ...boat } = boats.find((b) => b.name === boatName)!;
  const seats: Seat[] = crew.map((who, i) => {
    const athlete = athletes.find((a) => a.name === who)!;
    const stationX = boat.seats[i]!.stationM;
    const body = bodyOfAthlete(athlete);
    return { ...firstSetting({ body, boat, stationX, side: athlete.side, own: athlete }), athlete };
  });
  const begun = levelledFit(fitSchema.parse({ format: FIT_FORMAT, name, boat, seats }));
  return propose(evaluator, begun).fit;
}

/** A revision as the scenario keeps it: people by name. */
const revision = (name: string, reason: string, fit: Fit) => ({
  name,
  reason,
  seats: fit.seats.map((seat) => ({ ...seat, athlete: seat.athlete?.name ?? null })),
});

const single = proposed('Ylva in No. 4', 'No. 4, single', ['Ylva Tornqvarn']);
const padBack: Fit = {
  ...single,
  seats: single.seats.map((s) => ({ ...s, kneePad: { ...s.kneePad, aftM: s.kneePad.aftM + 0.01 } })),
};
const broad = proposed('Νεφέλη in the broad single', 'Broad single', ['Νεφέλη Ρεματάκη']);
const pair = proposed('Bohuš and Мирослав', 'No. 7, pair', ['Bohuš Křivolák', 'Мирослав Вербинчук']);

/** What Ylva said and the coach saw; the day is the one on which the demo is opened. */
const wednesday = {
  seat: 0,
  water: 'ripple',
  wind: 'head',
  observations: [
    { kind: 'boat', sign: 'bowDigs', strength: 2 },
    { kind: 'body', place: 'rearToes', feeling: 'pressure', strength: 1 },
  ],
  notes: 'Bow goes under when the rate goes up. Toes pressed on the rest, nothing worse.',
};

/** What stands in the club's paddle rack. */
const paddles = [
  { name: 'Dipper', lengthM: 1.42, bladeLengthM: 0.49, bladeAngleDeg: 0, massKg: 0.62 },
  { name: 'Wagtail', lengthM: 1.5, bladeLengthM: 0.52, bladeAngleDeg: 0, massKg: 0.64 },
  { name: 'Grebe', lengthM: 1.6, bladeLengthM: 0.55, bladeAngleDeg: 0, massKg: 0.7 },
  { name: 'Teal', lengthM: 1.63, bladeLengthM: 0.57, bladeAngleDeg: 4, massKg: 0.69 },
  { name: 'Coot', lengthM: 1.68, bladeLengthM: 0.58, bladeAngleDeg: 0, massKg: 0.72 },
  { name: 'Bittern', lengthM: 1.74, bladeLengthM: 0.61, bladeAngleDeg: 3, massKg: 0.74 },
  { name: 'Crane', lengthM: 1.78, bladeLengthM: 0.62, bladeAngleDeg: 0, massKg: 0.76 },
];

const scenario = {
  club: 'Old Sluice paddlers',
  athletes,
  measurings,
  boats: boats.map(({ hull: _, ...boat }) => boat),
  paddles,
  fits: [
    {
      name: single.name,
      boat: single.boat.name,
      revisions: [
        { ...revision('First setting', 'Proposed from six tape measures', single), trials: [wednesday] },
        {
          ...revision('Pad one hole back', 'Bow dug in at pace on the Wednesday', padBack),
          answers: [{ trial: 0, observation: 0 }],
        },
      ],
    },
    { name: broad.name, boat: broad.boat.name, revisions: [revision('First setting', 'Proposed', broad)] },
    { name: pair.name, boat: pair.boat.name, revisions: [revision('First setting', 'Proposed', pair)] },
  ],
};

writeFileSync(new URL('scenario.json', import.meta.url), `${JSON.stringify(scenario, null, 1)}\n`);
