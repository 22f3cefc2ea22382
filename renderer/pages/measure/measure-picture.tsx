import type { TapeMeasure } from '../../../core/document/athlete-schema.ts';
import { FIGURES, type Figure, type Limb } from './measure-figures.ts';

/** Size of the picture's own sheet. */
const SHEET = 300;

/** Where a measure is taken, drawn: the body in its posture, the two landmarks, and the tape between them. */
export function MeasurePicture({ measure, spoken }: { measure: TapeMeasure | 'stature'; spoken: string }) {
  const figure = FIGURES[measure];
  return (
    <svg className="measure-picture" viewBox={`0 0 ${SHEET} ${SHEET}`} role="img" aria-label={spoken}>
      {figure.ground.map((line) => (
        <path key={line} d={line} className="picture-ground" />
      ))}
      {figure.limbs.map((limb) => (
        <LimbShape key={`${limb.from} ${limb.to}`} limb={limb} />
      ))}
      {figure.shapes.map((shape) => (
        <path key={shape} d={shape} className="picture-near" />
      ))}
      {figure.head && (
        <circle cx={figure.head[0]} cy={figure.head[1]} r={figure.head[2]} className="picture-near" />
      )}
      <Tape figure={figure} />
    </svg>
  );
}

/** A limb as a rounded bar of its own width with its outline: the outline is the same bar drawn wider beneath. */
function LimbShape({ limb }: { limb: Limb }) {
  const d = `M${limb.from[0]} ${limb.from[1]}L${limb.to[0]} ${limb.to[1]}`;
  return (
    <>
      <path d={d} className="picture-limb-line" strokeWidth={limb.width + 2} />
      <path d={d} className={limb.far ? 'picture-limb-far' : 'picture-limb'} strokeWidth={limb.width} />
    </>
  );
}

/** The measured stretch: two landmarks, lines from them to the tape where it lies aside, and the tape with its ends. */
function Tape({ figure: { from, to, aside } }: { figure: Figure }) {
  const [a, b] = aside ?? [from, to];
  const along = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const across = [(-(b[1] - a[1]) / along) * 6, ((b[0] - a[0]) / along) * 6] as const;
  const end = ([x, y]: readonly [number, number]) =>
    `M${x - across[0]} ${y - across[1]}L${x + across[0]} ${y + across[1]}`;
  return (
    <g>
      {aside && <path d={`M${from}L${a}M${to}L${b}`} className="picture-reach" />}
      <path d={`M${a}L${b}${end(a)}${end(b)}`} className="picture-tape" />
      {[from, to].map((mark) => (
        <circle key={String(mark)} cx={mark[0]} cy={mark[1]} r="5" className="picture-mark" />
      ))}
    </g>
  );
}
