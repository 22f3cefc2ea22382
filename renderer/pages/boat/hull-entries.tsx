import { boatSchema } from '../../../core/document/boat-schema.ts';
import { tapeHull } from '../../../core/document/hull-kinds-schema.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { say } from '../../language/messages.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import type { BoatEntries } from './boat-entries.ts';
import { OffsetsImport } from './offsets-import.tsx';
import { StationTable } from './station-table.tsx';

/** The hull, by tape or by a table of offsets. */
export function HullEntries(props: { entries: BoatEntries; onChange: (part: Partial<BoatEntries>) => void }) {
  const { entries, onChange } = props;
  return (
    <section>
      <h2>{say('boat.hull')}</h2>
      <div className="entry-grid">
        <ChoiceField
          label={say('boat.hull.how')}
          value={entries.hullKind}
          onChange={(hullKind) => onChange({ hullKind })}
          options={[
            { value: 'tape', name: say('boat.hull.tape') },
            { value: 'offsets', name: say('boat.hull.offsets') },
          ]}
        />
        {entries.hullKind === 'tape' && (
          <MeasureField
            label={say('boat.length')}
            kind="length"
            value={entries.lengthM}
            {...limitsOf(tapeHull.shape.lengthM)}
            onEnter={(lengthM) => onChange({ lengthM })}
            required
          />
        )}
        <MeasureField
          label={say('boat.skin')}
          kind="length"
          value={entries.skinM}
          {...limitsOf(boatSchema.shape.skinM.unwrap())}
          onEnter={(skinM) => onChange({ skinM })}
        />
      </div>
      {entries.hullKind === 'tape' ? (
        <>
          <h3 className="lettering">{say('boat.stations')}</h3>
          <p className="soft">{say('boat.stations.about')}</p>
          <StationTable entries={entries} onChange={onChange} />
        </>
      ) : (
        <OffsetsImport
          offsets={entries.offsets}
          onRead={(offsets) => onChange({ offsets, lengthM: hullLengthOf(offsets) })}
        />
      )}
    </section>
  );
}
