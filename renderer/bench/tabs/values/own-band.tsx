import { useState } from 'react';
import type { BandOverride } from '../../../../core/document/band-override-schema.ts';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import type { QuantityId } from '../../../../core/evaluation/quantities.ts';
import { isYesOrNo } from '../../../../core/text/sentences.ts';
import { toDegrees } from '../../../../core/units/angle.ts';
import { say } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { Button } from '../../../ui/button.tsx';
import { bandProblem, EDGE_BOUNDS, edgeHint, edgeKind } from '../../../ui/fields/band-edges.ts';
import { MeasureField } from '../../../ui/fields/measure-field.tsx';
import { TextField } from '../../../ui/fields/text-field.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { KeepBand } from './keep-band.tsx';

/** A band of this athlete's own in place of the usual one, with the coach's reason. */
export function OwnBand({ id, seat, finding }: { id: QuantityId; seat: number; finding: Finding }) {
  const document = useDocument();
  const own = useFit(({ fit }) => fit.seats[seat]?.bands.find(({ quantity }) => quantity === id));
  const athlete = useFit(({ fit }) => fit.seats[seat]?.athlete);
  const [open, setOpen] = useState(false);
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
  return (
    <div className="own-band">
      <p className="row">
        <Button aria-expanded={open} onClick={() => setOpen(!open)}>
          {say('values.own-band')}
        </Button>
        {own && (
          <Button look="words" onClick={() => keep(null)}>
            {say('values.own-band.usual')}
          </Button>
        )}
      </p>
      {own && athlete && <KeepBand band={own} athlete={athlete} />}
      {open && <BandFields id={id} finding={finding} reason={own?.reason ?? ''} onKeep={keep} />}
    </div>
  );
}

/** Edges and reason of the band, in the unit that it is kept in: angles in degrees. */
function BandFields(props: {
  id: QuantityId;
  finding: Finding;
  reason: string;
  onKeep: (band: BandOverride) => void;
}) {
  const { unit, band } = props.finding;
  const written = (edge: number | null) => (edge !== null && unit === 'rad' ? toDegrees(edge) : edge);
  const [values, setValues] = useState({
    min: written(band.min),
    max: written(band.max),
    reason: props.reason,
  });
  const problem = bandProblem(values);
  const edge = (key: 'min' | 'max', label: string) => (
    <MeasureField
      label={label}
      kind={edgeKind(unit)}
      value={values[key]}
      problem={key === 'max' ? problem : null}
      {...EDGE_BOUNDS}
      hint={edgeHint(unit)}
      onEnter={(value) => setValues({ ...values, [key]: value })}
      onEmpty={() => setValues({ ...values, [key]: null })}
    />
  );
  const reason = values.reason.trim();
  return (
    <div className="stack">
      <div className="entry-row">
        {edge('min', say('athlete-bands.from'))}
        {edge('max', say('athlete-bands.to'))}
      </div>
      <TextField
        label={say('athlete-page.why')}
        value={values.reason}
        onChange={(typed) => setValues({ ...values, reason: typed })}
      />
      <p>
        <Button
          disabled={reason === '' || problem !== null}
          onClick={() => props.onKeep({ quantity: props.id, ...values, reason })}
        >
          {say('values.own-band.keep')}
        </Button>
      </p>
    </div>
  );
}
