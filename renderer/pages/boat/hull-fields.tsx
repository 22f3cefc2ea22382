import type { Boat } from '../../../core/document/boat-schema.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { Explained } from '../../language/explained.tsx';
import { say } from '../../language/messages.ts';
import { Field } from '../../ui/form/field.tsx';
import { BoardFit } from './board-fit.tsx';
import type { BoatSectionProps } from './boat-values.ts';
import { OffsetsImport } from './offsets-import.tsx';
import { StationTable } from './station-table.tsx';
import { StemFields } from './stem-fields.tsx';
import { UsualDoubtHint } from './usual-numbers.tsx';

const kinds = () =>
  (['usual', 'tape', 'offsets'] as const).map((value) => ({ value, name: say(`boat.hull.${value}`) }));

/** The hull: the usual lines of its class, by tape, or by a table of offsets. */
export function HullFields({ form, boat }: BoatSectionProps & { boat: Boat | null }) {
  const { hullKind, offsets } = form.values;
  return (
    <section>
      <h2>{say('boat.hull')}</h2>
      <div className="entry-grid known-from">
        <Field as="choice" {...form.at('hullKind')} label={say('boat.hull.how')} options={kinds()} />
        {hullKind === 'tape' && (
          <Field as="length" {...form.at('lengthM')} label={say('boat.class-check.greatest-length')} />
        )}
        {hullKind !== 'usual' && <Field as="length" {...form.at('skinM')} label={say('boat.skin')} />}
      </div>
      {hullKind === 'usual' && <UsualDoubtHint values={form.values} />}
      {hullKind === 'tape' && (
        <>
          <h3 className="lettering">{say('boat.stations')}</h3>
          <p className="soft">
            <Explained text={say('boat.stations.about')} />
          </p>
          <StationTable form={form} />
        </>
      )}
      {hullKind !== 'offsets' && <StemFields form={form} />}
      {hullKind === 'offsets' && (
        <>
          <OffsetsImport
            offsets={offsets}
            onRead={(read) => form.change({ offsets: read, lengthM: hullLengthOf(read) })}
          />
          <BoardFit values={form.values} boat={boat} />
        </>
      )}
    </section>
  );
}
