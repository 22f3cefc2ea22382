import { type KneePad, kneePadSchema, type Seat } from '../../../core/document/seat-schema.ts';
import { USUAL_FOAM } from '../../../core/parts/seat-parts.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';

const { lengthM, widthM, recessDepthM, foamM } = kneePadSchema.shape;
const FIELDS = {
  lengthM: lengthM.unwrap(),
  widthM: widthM.unwrap(),
  recessDepthM: recessDepthM.unwrap(),
  foamM: foamM.unwrap(),
} as const;
const NAMES = ['lengthM', 'widthM', 'recessDepthM', 'foamM'] as const;

/** Size of the pad's block, depth of its recess and the foam in it: what the block is sawn and carved to. */
export function PadBlockSizes({
  pad,
  change,
}: {
  pad: KneePad;
  change: (what: string, edit: (seat: Seat) => Seat) => void;
}) {
  return (
    <details>
      <summary>{say('measures.block')}</summary>
      <div className="entry-grid">
        {NAMES.map((name) => {
          const what = say(`measures.block.${name}`);
          return (
            <MeasureField
              key={name}
              label={what}
              kind="length"
              value={pad[name] ?? USUAL_FOAM}
              {...limitsOf(FIELDS[name])}
              onEnter={(to) => change(what, (at) => ({ ...at, kneePad: { ...at.kneePad, [name]: to } }))}
            />
          );
        })}
      </div>
    </details>
  );
}
