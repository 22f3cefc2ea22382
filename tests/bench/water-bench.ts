import { resistance, towed } from '../../core/under-way/resistance.ts';
import { sampleHull } from '../reference/hydro-sample-hulls.ts';
import { wigley } from '../reference/hydro-shapes.ts';
import { wigleyWaveResistance } from '../reference/wave-wigley.ts';
import { ratioOf, sideBySide } from './measure.ts';
import { type Found, rowOf, type Times } from './row.ts';

const POINT = 'resistance at one speed, hull known';
const FIRST = 'resistance at one speed, its immersed part read first';
const CURVE = 'resistance curve of 19 speeds';
const INDEPENDENT = 'waves of a Wigley hull by Gauss panels, inner integrals in closed form, as near';

const WATER = { waterDensity: 999.1, kinematicViscosity: 1.14e-6 };
const WIGLEY = { L: 5.2, B: 0.42, T: 0.1031 };
const SPEEDS = Array.from({ length: 19 }, (_, i) => 1.5 + i * 0.25);

/** Resistance of the sample single, and of a Wigley hull beside an independent quadrature. */
export function waterBench(): Found {
  const hull = sampleHull('single');
  const lying = { draft: 0.105, trim: 0.002, ...WATER };
  const at = towed(hull, lying);
  const parabolic = towed(wigley(WIGLEY, { stations: 41, points: 121 }), {
    draft: WIGLEY.T,
    trim: 0,
    ...WATER,
  });
  const times: Record<string, Times> = sideBySide(
    {
      [POINT]: (call) => at(4.2 + 1e-6 * (call % 100)),
      [FIRST]: (call) => resistance(hull, { ...lying, speed: 4.2 + 1e-6 * (call % 100) }),
      [CURVE]: () => SPEEDS.map((speed) => at(speed)),
      wigley: (call) => parabolic(4.2 + 1e-6 * (call % 100)),
      [INDEPENDENT]: (call) =>
        wigleyWaveResistance(WIGLEY, { speed: 4.2 + 1e-6 * (call % 100), density: 1000 }),
    },
    { rounds: 9 },
  );
  const ratio = { to: POINT, times: ratioOf(times[INDEPENDENT]!, times.wigley!) };
  return {
    rows: [POINT, FIRST, CURVE]
      .map((name) => rowOf('core', name, { times: times[name]! }))
      .concat(rowOf('core', INDEPENDENT, { times: times[INDEPENDENT]!, ratio })),
    facts: [],
  };
}
