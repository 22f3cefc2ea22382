import type { Fit } from '../../../../core/document/fit-schema.ts';
import type { Seat } from '../../../../core/document/seat-schema.ts';
import { DEFAULT_RATE_PER_MIN } from '../../../../core/document/stroke-defaults.ts';
import { STROKE_POSTURE } from '../../../../core/posture/neutral-posture.ts';
import { strokePitch } from '../../../../core/posture/stroke-pitch.ts';
import { usualDriveForce } from '../../../../core/support/blade-force.ts';
import { useFormat } from '../../../display/use-display.ts';
import { type MessageKey, say, words } from '../../../language/messages.ts';
import { MeasureField } from '../../../ui/fields/measure-field.tsx';
import type { MeasureKind } from '../../../ui/fields/measure-kinds.ts';
import { useDocument, useFit } from '../../bench-context.tsx';

type StrokeEntry = Exclude<keyof Seat['stroke'], 'topHandOverM'>;

/** One entry: what it is called, its range as the document takes it, and what holds while it is left empty. */
interface EntryRule {
  readonly entry: StrokeEntry;
  readonly label: Extract<MessageKey, `stroke.${string}`>;
  readonly kind: MeasureKind;
  readonly min: number;
  readonly max: number;
  readonly usual: number;
  readonly source:
    | 'stroke.rate.usual'
    | 'stroke.force.usual'
    | 'stroke.catch-pitch.usual'
    | 'stroke.usual.estimate';
}

/** Body mass that the usual force is told for while nobody kneels in the seat, kilograms. */
const USUAL_MASS_KG = 75;

const degrees = (radians: number) => Math.round((radians * 180) / Math.PI);

const ENTRIES: readonly EntryRule[] = [
  {
    entry: 'ratePerMin',
    label: 'stroke.rate',
    kind: 'number',
    min: 10,
    max: 140,
    usual: DEFAULT_RATE_PER_MIN,
    source: 'stroke.rate.usual',
  },
  {
    entry: 'driveForceN',
    label: 'stroke.force',
    kind: 'number',
    min: 0,
    max: 1000,
    usual: usualDriveForce(USUAL_MASS_KG),
    source: 'stroke.force.usual',
  },
  {
    entry: 'catchPitchDeg',
    label: 'stroke.catch-pitch',
    kind: 'angle',
    min: -20,
    max: 90,
    usual: degrees(STROKE_POSTURE.catchPitch),
    source: 'stroke.catch-pitch.usual',
  },
  {
    entry: 'exitPitchDeg',
    label: 'stroke.exit-pitch',
    kind: 'angle',
    min: -20,
    max: 90,
    usual: degrees(STROKE_POSTURE.exitPitch),
    source: 'stroke.usual.estimate',
  },
  {
    entry: 'catchRotationDeg',
    label: 'stroke.catch-turn',
    kind: 'angle',
    min: -20,
    max: 90,
    usual: degrees(STROKE_POSTURE.catchRotation),
    source: 'stroke.usual.estimate',
  },
  {
    entry: 'exitRotationDeg',
    label: 'stroke.exit-turn',
    kind: 'angle',
    min: -60,
    max: 60,
    usual: degrees(STROKE_POSTURE.exitRotation),
    source: 'stroke.usual.estimate',
  },
];

/** The fit with one entry of the stroke set, or left to the usual (null). The rate is the whole crew's. */
export function withStroke(
  fit: Fit,
  { seat, entry }: { seat: number; entry: keyof Seat['stroke'] },
  value: number | null,
): Fit {
  const seats = fit.seats.map((at, index) => {
    if (index !== seat && entry !== 'ratePerMin') return at;
    const { [entry]: _, ...others } = at.stroke;
    return { ...at, stroke: value === null ? others : { ...others, [entry]: value } };
  });
  return { ...fit, seats };
}

/** What is usual for this athlete: the force goes by the mass, the trunk by the athlete's own limit; null where it is everybody's. */
function usualFor(athlete: Seat['athlete'], entry: keyof Seat['stroke']): number | null {
  if (entry === 'driveForceN') return Math.round(usualDriveForce(athlete?.massKg ?? USUAL_MASS_KG));
  if (entry === 'catchPitchDeg') return degrees(strokePitch({ athlete, stroke: {} }, 'catch'));
  if (entry === 'exitPitchDeg') return degrees(strokePitch({ athlete, stroke: {} }, 'exit'));
  return null;
}

/** How this paddler strokes: every entry may be left to what is usual, which stands under it with its source. */
export function StrokeInputs() {
  const document = useDocument();
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const stroke = useFit(({ fit }) => fit.seats[seat]!.stroke);
  const athlete = useFit(({ fit }) => fit.seats[seat]!.athlete);
  const isCrew = useFit(({ fit }) => fit.seats.length > 1);
  return (
    <div className="stroke-inputs">
      {ENTRIES.map(({ entry, label, kind, min, max, usual: generally, source }) => {
        const usual = usualFor(athlete, entry) ?? generally;
        const what = say(label);
        const step = say('step.set', { what });
        const set = (value: number | null) => (fit: Fit) => withStroke(fit, { seat, entry }, value);
        const text = kind === 'angle' ? format.degrees(usual) : format.number(usual, { decimals: 0 });
        const hint = say(source, { value: text });
        return (
          <MeasureField
            key={entry}
            label={what}
            kind={kind}
            stepped
            value={stroke[entry] ?? null}
            from={usual}
            min={min}
            max={max}
            hint={words().sentences(
              entry === 'ratePerMin' && isCrew ? [hint, say('stroke.inputs.crew-rate')] : [hint],
            )}
            onEnter={(value) => document.apply(step, set(value))}
            onNudge={(value) => document.nudge(step, set(value))}
            onEmpty={() => document.apply(step, set(null))}
          />
        );
      })}
    </div>
  );
}
