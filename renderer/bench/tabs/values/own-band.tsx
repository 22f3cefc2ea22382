import { useState } from 'react';
import type { BandOverride } from '../../../../core/document/band-override-schema.ts';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import type { QuantityId } from '../../../../core/evaluation/quantities.ts';
import { isYesOrNo, quantityName } from '../../../../core/text/sentences.ts';
import { toDegrees } from '../../../../core/units/angle.ts';
import { say } from '../../../language/messages.ts';
import { MeasureField } from '../../../ui/fields/measure-field.tsx';
import type { MeasureKind } from '../../../ui/fields/measure-kinds.ts';
import { TextField } from '../../../ui/fields/text-field.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { KeepBand } from './keep-band.tsx';

const KIND: Readonly<Record<string, MeasureKind>> = { m: 'length', rad: 'angle', kg: 'mass' };

/** A band of this athlete's own in place of the usual one, with the coach's reason. */
export function OwnBand({ id, seat, finding }: { id: QuantityId; seat: number; finding: Finding }) {
  const document = useDocument();
  const own = useFit(({ fit }) => fit.seats[seat]?.bands.find(({ quantity }) => quantity === id));
  const athlete = useFit(({ fit }) => fit.seats[seat]?.athlete);
  const [open, setOpen] = useState(false);
  const written = (edge: number | null) => (edge !== null && finding.unit === 'rad' ? toDegrees(edge) : edge);
  const [entries, setEntries] = useState<Omit<BandOverride, 'quantity'>>({
    min: written(finding.band.min),
    max: written(finding.band.max),
    reason: own?.reason ?? '',
  });
  if (isYesOrNo(id)) return null;

  const keep = (band: BandOverride | null) => {
    document.apply(say('step.band', { what: quantityName(id) }), (fit) => ({
      ...fit,
      seats: fit.seats.map((at, index) => {
        if (index !== seat) return at;
        const others = at.bands.filter(({ quantity }) => quantity !== id);
        return { ...at, bands: band ? [...others, band] : others };
      }),
    }));
    setOpen(false);
  };

  const edge = (key: 'min' | 'max', label: string) => (
    <MeasureField
      label={label}
      kind={KIND[finding.unit] ?? 'number'}
      value={entries[key]}
      min={-1000}
      max={1000}
      onEnter={(value) => setEntries({ ...entries, [key]: value })}
      onEmpty={() => setEntries({ ...entries, [key]: null })}
    />
  );
  return (
    <div className="own-band">
      <p className="row">
        <button type="button" className="button" aria-expanded={open} onClick={() => setOpen(!open)}>
          {say('values.own-band')}
        </button>
        {own && (
          <button type="button" className="button words" onClick={() => keep(null)}>
            {say('values.own-band.usual')}
          </button>
        )}
      </p>
      {own && athlete && <KeepBand band={own} athlete={athlete} />}
      {open && (
        <div className="stack">
          <div className="entry-row">
            {edge('min', say('values.own-band.from'))}
            {edge('max', say('values.own-band.to'))}
          </div>
          <TextField
            label={say('values.own-band.why')}
            value={entries.reason}
            onChange={(reason) => setEntries({ ...entries, reason })}
          />
          <p>
            <button
              type="button"
              className="button"
              disabled={entries.reason.trim() === ''}
              onClick={() => keep({ quantity: id, ...entries, reason: entries.reason.trim() })}
            >
              {say('values.own-band.keep')}
            </button>
          </p>
        </div>
      )}
    </div>
  );
}
