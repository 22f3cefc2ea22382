import { useState } from 'react';
import type { Quantity } from '../../../../core/evaluation/finding.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { balanceSentence, quantityName } from '../../../language/sentences.ts';
import { TextField } from '../../../ui/fields/text-field.tsx';
import { useFit } from '../../bench-context.tsx';
import { CentimetreTable } from './centimetre-table.tsx';
import { LiveText } from './live-text.tsx';
import { ValueRow } from './value-row.tsx';
import './values.css';
import './values-list.css';

/** Every value of the report: with its band, how sure it is and where it comes from a click away. */
export function Values() {
  const seat = useFit((state) => state.seat);
  const quantities = useFit(({ report }) => report.quantities);
  const occupied = useFit(({ fit }) => fit.seats[seat]?.athlete != null);
  const format = useFormat();
  const [search, setSearch] = useState('');
  const matches = ({ id }: Quantity) =>
    quantityName(id).toLocaleLowerCase().includes(search.trim().toLocaleLowerCase());
  const part = (of: number | null, title: string) => {
    const shown = quantities.filter((quantity) => quantity.seat === of && matches(quantity));
    if (shown.length === 0) return null;
    return (
      <>
        <h2 className="lettering">{title}</h2>
        <ul className="values-list">
          {shown.map(({ id }) => (
            <ValueRow key={`${id} ${of}`} id={id} seat={of} />
          ))}
        </ul>
      </>
    );
  };
  return (
    <div className="values">
      <TextField label={say('values.filter')} type="search" value={search} onChange={setSearch} />
      {occupied && <CentimetreTable />}
      {part(seat, say('crew.paddler'))}
      {part(null, say('fitting.boat'))}
      <p className="soft">
        <LiveText write={(_, { balance }) => (balance ? balanceSentence(balance, format.value) : '')} />
      </p>
    </div>
  );
}
