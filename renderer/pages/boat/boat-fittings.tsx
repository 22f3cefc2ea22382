import { floorboardSchema, hardwareSchema } from '../../../core/document/boat-schema.ts';
import { say } from '../../language/messages.ts';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { BoardFit } from './board-fit.tsx';
import type { BoatEntries } from './boat-entries.ts';
import { BoatRails } from './boat-rails.tsx';
import { BoatStock } from './boat-stock.tsx';
import type { FittingsProps } from './fittings-props.ts';
import { FloorProfile } from './floor-profile.tsx';

const { heightM, widthM } = floorboardSchema.shape;
const pitch = hardwareSchema.shape.padHolePitchM.unwrap().unwrap();
const travel = { min: -1, max: 2 };

/** The floorboard that everything is fixed to, and the fixings. */
export function BoatFittings(props: FittingsProps) {
  return (
    <>
      <Floorboard {...props} />
      <FloorProfile {...props} />
      <Fixings {...props} />
      <BoatRails {...props} />
      <BoatStock {...props} />
    </>
  );
}

function Floorboard({ entries, problems, onChange }: FittingsProps) {
  const { floorboard } = entries;
  const set = (part: Partial<BoatEntries['floorboard']>) =>
    onChange({ floorboard: { ...floorboard, ...part } });
  const place = { kind: 'length', min: 0, max: entries.lengthM ?? 15, required: true } as const;
  const wrong = (value: number | null, field: string) =>
    value === null ? problems[`floorboard.${field}`] : null;
  return (
    <section>
      <h2>{say('boat.floorboard')}</h2>
      <div className="entry-grid">
        <MeasureField
          {...place}
          {...limitsOf(heightM)}
          label={say('boat.floorboard.height')}
          value={floorboard.heightM}
          onEnter={(value) => set({ heightM: value })}
          problem={wrong(floorboard.heightM, 'heightM')}
        />
        <MeasureField
          {...place}
          {...limitsOf(widthM)}
          label={say('boat.floorboard.width')}
          value={floorboard.widthM}
          onEnter={(value) => set({ widthM: value })}
          problem={wrong(floorboard.widthM, 'widthM')}
        />
        <MeasureField
          {...place}
          label={say('boat.floorboard.aft')}
          value={floorboard.aftFromSternM}
          onEnter={(value) => set({ aftFromSternM: value })}
          problem={wrong(floorboard.aftFromSternM, 'aftEndXM')}
        />
        <MeasureField
          {...place}
          label={say('boat.floorboard.fore')}
          value={floorboard.foreFromSternM}
          onEnter={(value) => set({ foreFromSternM: value })}
          problem={wrong(floorboard.foreFromSternM, 'foreEndXM')}
        />
      </div>
      <BoardFit entries={entries} />
    </section>
  );
}

function Fixings({ entries, onChange }: FittingsProps) {
  const { hardware } = entries;
  const set = (part: Partial<BoatEntries['hardware']>) => onChange({ hardware: { ...hardware, ...part } });
  const pitchField = (key: 'padHolePitchM' | 'restHolePitchM', label: string) => (
    <MeasureField
      label={label}
      hint={say('boat.hardware.pitch.hint')}
      kind="length"
      value={hardware[key]}
      {...limitsOf(pitch)}
      onEnter={(value) => set({ [key]: value })}
      onEmpty={() => set({ [key]: null })}
    />
  );
  const travelField = (key: 'padTravelM' | 'restTravelM', end: 0 | 1, what: string) => (
    <MeasureField
      label={end === 0 ? say('boat.hardware.from', { what }) : say('boat.hardware.to', { what })}
      kind="length"
      value={hardware[key][end]}
      {...travel}
      onEnter={(value) => {
        const [from, to] = hardware[key];
        set({ [key]: end === 0 ? [value, to] : [from, value] });
      }}
    />
  );
  return (
    <section>
      <h2>{say('boat.hardware')}</h2>
      <div className="entry-grid">
        {pitchField('padHolePitchM', say('boat.hardware.pad-pitch'))}
        {travelField('padTravelM', 0, say('boat.hardware.pad-travel'))}
        {travelField('padTravelM', 1, say('boat.hardware.pad-travel'))}
        {pitchField('restHolePitchM', say('boat.hardware.rest-pitch'))}
        {travelField('restTravelM', 0, say('boat.hardware.rest-travel'))}
        {travelField('restTravelM', 1, say('boat.hardware.rest-travel'))}
      </div>
    </section>
  );
}
