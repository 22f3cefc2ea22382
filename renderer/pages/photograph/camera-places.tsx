import { useMemo } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { sheerHalfBreadth } from '../../../core/hull/section-at.ts';

/** The drawing's units: millimetres. */
const PER_METRE = 1000;
/** How far the camera stands from the paddler, metres (common practice, no source: nearer, a lens distorts a stance). */
const AWAY = 5;
/** Margin around cameras and boat; half of what a camera sees at the paddler; size of a drawn camera, metres. */
const PAPER = 0.6;
const SEES_HALF = 1.2;
const CAMERA = 0.34;
/** Points along each side of the boat. */
const STEPS = 40;

/** Where the camera stands, from above: square to the boat beside the paddler, and on the centreline behind. */
export function CameraPlaces({ fit, seat }: { fit: Fit; seat: number }) {
  const { outline, stationX, foreX, aftX } = useMemo(() => planOf(fit, seat), [fit, seat]);
  const left = Math.min(aftX, stationX - AWAY) - PAPER;
  const right = Math.max(foreX, stationX + SEES_HALF) + PAPER;
  const top = SEES_HALF + PAPER / 2;
  const box = [left, -top, right - left, top + AWAY + PAPER].map((metres) => metres * PER_METRE);
  return (
    <svg viewBox={box.join(' ')} aria-hidden="true" focusable="false">
      <g transform={`scale(${PER_METRE})`}>
        <path className="camera-boat" d={outline} />
        <circle className="camera-paddler" cx={stationX} cy={0} r={0.16} />
        <g transform={`translate(${stationX} ${AWAY})`}>
          <Camera />
        </g>
        <g transform={`translate(${stationX - AWAY} 0) rotate(90)`}>
          <Camera />
        </g>
      </g>
    </svg>
  );
}

/** A camera that looks up the sheet at what is `AWAY` from it, with the edges of its picture. */
function Camera() {
  const half = CAMERA / 2;
  return (
    <>
      <path className="camera-sight" d={`M0 0L${-SEES_HALF} ${-AWAY}M0 0L${SEES_HALF} ${-AWAY}`} />
      <path
        className="camera-body"
        d={`M${-CAMERA} 0V${CAMERA}H${CAMERA}V0H${half}L${half / 2} ${-half}H${-half / 2}L${-half} 0Z`}
      />
    </>
  );
}

function planOf(fit: Fit, index: number) {
  const hull = hullOfBoat(fit.boat);
  const { foreX, aftX } = hull;
  const { stationX } = seatFrame(fit.boat, fit.seats[index]!, index);
  const along = Array.from({ length: STEPS + 1 }, (_, i) => aftX + ((foreX - aftX) * i) / STEPS);
  const side = (sign: 1 | -1) => along.map((x) => `${x} ${sign * sheerHalfBreadth(hull, x)}`);
  return {
    outline: `M${[...side(1), ...side(-1).reverse()].join('L')}Z`,
    stationX,
    foreX,
    aftX,
  };
}
