import type { Boat } from '../../../core/document/boat-schema.ts';
import { useBoat } from '../../client/use-record.ts';
import { hullOrWhyNot } from '../../document/solved-fit.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Page } from '../../ui/page.tsx';
import { OlderFits } from '../boat/older-fits.tsx';
import { FloatCheckForm } from './float-check-form.tsx';
import { FormTable } from './form-table.tsx';
import { LinesPlan } from './lines-plan.tsx';
import { RightingArms } from './righting-arms.tsx';
import './hull.css';

/** A boat's lines and how it floats. */
export function HullPage({ id }: { id: string }) {
  const { record, error, reload } = useBoat(id);
  return (
    <Page
      title={say('hull.title', { name: record?.boat.name ?? '' })}
      wide
      tools={
        <>
          <a className="button" href={hrefOf({ page: 'boat', id })}>
            {say('hull.back')}
          </a>
          <Button onClick={() => window.print()}>{say('hull.print')}</Button>
        </>
      }
    >
      {error && <ErrorMessage error={error} />}
      {record === undefined && !error && <p className="soft">{say('sheet.loading')}</p>}
      {record === null && <p>{say('boat.not-found')}</p>}
      {record && <OlderFits id={record.id} boat={record.boat} />}
      {record && (
        <HullSheets key={record.changedAt} boat={{ ...record.boat, id: record.id }} onChanged={reload} />
      )}
    </Page>
  );
}

function HullSheets({ boat, onChanged }: { boat: Boat; onChanged: () => void }) {
  const hull = hullOrWhyNot(boat);
  if (typeof hull === 'string') return <p role="alert">{say('setout.broken', { why: hull })}</p>;
  return (
    <div className="hull-sheets">
      <LinesPlan id={boat.id ?? ''} hull={hull} name={boat.name} />
      <FormTable boat={boat} hull={hull} />
      <RightingArms hull={hull} boat={boat} />
      <FloatCheckForm boat={boat} onChanged={onChanged} />
    </div>
  );
}
