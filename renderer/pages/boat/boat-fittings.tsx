import type { Boat } from '../../../core/document/boat-schema.ts';
import { say } from '../../language/messages.ts';
import { Field } from '../../ui/form/field.tsx';
import { BoardFit } from './board-fit.tsx';
import { BoatHoles } from './boat-holes.tsx';
import { BoatRails } from './boat-rails.tsx';
import { BoatStock } from './boat-stock.tsx';
import type { BoatSectionProps } from './boat-values.ts';
import { FloorProfile } from './floor-profile.tsx';

/** The floorboard that everything is fixed to, and the fixings. */
export function BoatFittings({ form, boat }: BoatSectionProps & { boat: Boat | null }) {
  return (
    <>
      <Floorboard form={form} boat={boat} />
      <FloorProfile form={form} />
      <Fixings form={form} />
      <BoatRails form={form} />
      <BoatHoles form={form} />
      <BoatStock form={form} />
    </>
  );
}

function Floorboard({ form, boat }: BoatSectionProps & { boat: Boat | null }) {
  const most = form.values.lengthM ?? 15;
  return (
    <section>
      <h2>{say('boat.floorboard')}</h2>
      <div className="entry-grid">
        <Field as="length" {...form.at('floorboard', 'heightM')} label={say('boat.floorboard.height')} />
        <Field as="length" {...form.at('floorboard', 'widthM')} label={say('measures.block.widthM')} />
        <Field
          as="length"
          {...form.at('floorboard', 'thicknessM')}
          label={say('boat.floorboard.thickness')}
        />
        <Field
          as="length"
          {...form.at('floorboard', 'aftFromSternM')}
          max={most}
          label={say('boat.floorboard.aft')}
        />
        <Field
          as="length"
          {...form.at('floorboard', 'foreFromSternM')}
          max={most}
          label={say('boat.floorboard.fore')}
        />
      </div>
      <BoardFit values={form.values} boat={boat} />
    </section>
  );
}

function Fixings({ form }: BoatSectionProps) {
  const pitch = (key: 'padHolePitchM' | 'restHolePitchM', label: string) => (
    <Field as="length" {...form.at('hardware', key)} label={label} hint={say('boat.hardware.pitch.hint')} />
  );
  const travel = (key: 'padTravelM' | 'restTravelM', what: string) => (
    <>
      <Field as="length" {...form.at('hardware', key, 0)} label={say('boat.hardware.from', { what })} />
      <Field as="length" {...form.at('hardware', key, 1)} label={say('boat.hardware.to', { what })} />
    </>
  );
  return (
    <section>
      <h2>{say('boat.hardware')}</h2>
      <div className="entry-grid">
        {pitch('padHolePitchM', say('boat.hardware.pad-pitch'))}
        {travel('padTravelM', say('boat.hardware.pad-travel'))}
        {pitch('restHolePitchM', say('boat.hardware.rest-pitch'))}
        {travel('restTravelM', say('boat.hardware.rest-travel'))}
        <Field
          as="length"
          {...form.at('hardware', 'boltM')}
          label={say('boat.hardware.bolt')}
          hint={say('boat.hardware.bolt.hint')}
        />
      </div>
    </section>
  );
}
