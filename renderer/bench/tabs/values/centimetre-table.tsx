import { useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { COORDINATES, FITTING_COORDINATES, isAngle } from '../../../../core/document/coordinates.ts';
import { LOCKABLE } from '../../../../core/document/seat-schema.ts';
import type { Quantity } from '../../../../core/evaluation/finding.ts';
import type { Derivative } from '../../../../core/optimise/sensitivity.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { Button } from '../../../ui/button.tsx';
import { useFit, useSlow } from '../../bench-context.tsx';
import { isNothing } from '../../card/effect-text.ts';
import { cellText, hasSlope, stepText, tableStepOf } from './centimetre-cells.ts';

/** The coordinates of each fitting, in the table's order of columns. */
const COLUMNS = LOCKABLE.map((fitting) => ({
  fitting,
  coordinates: FITTING_COORDINATES.filter((c) => COORDINATES[c].fitting === fitting),
}));

/** Opens the whole table of what one centimetre does, over the page. */
export function CentimetreTable() {
  const format = useFormat();
  const [open, setOpen] = useState(false);
  const step = stepText(format);
  return (
    <>
      <Button onClick={() => setOpen(true)}>{say('centimetre.ask', { step })}</Button>
      <ModalOverlay className="veil" isOpen={open} onOpenChange={setOpen} isDismissable>
        <Modal className="dialog wide-dialog">
          <Dialog>
            {({ close }) => (
              <div className="stack">
                <div className="row spread">
                  <Heading slot="title" level={2}>
                    {say('centimetre.title', { step })}
                  </Heading>
                  <Button onClick={close}>{say('menu.close')}</Button>
                </div>
                <p className="soft">{say('centimetre.about', { step })}</p>
                <Slopes />
              </div>
            )}
          </Dialog>
        </Modal>
      </ModalOverlay>
    </>
  );
}

function Slopes() {
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const quantities = useFit(({ report }) => report.quantities);
  const derivatives = useSlow((answers) => (answers.seat === seat ? answers.derivatives : null));
  if (!derivatives?.['kneePad.aftM']) return <p role="status">{say('proposal.working')}</p>;
  const step = stepText(format);
  const rows = quantities.filter((q) => hasSlope(q) && (q.seat === seat || q.seat === null));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keys
    <section className="centimetre-scroll" tabIndex={0} aria-label={say('centimetre.title', { step })}>
      <table className="centimetre">
        <thead>
          <tr>
            <th scope="col" rowSpan={2}>
              {say('centimetre.value')}
            </th>
            {COLUMNS.map(({ fitting, coordinates }) => (
              <th key={fitting} scope="colgroup" colSpan={coordinates.length}>
                {say(`fitting.${fitting}`)}
              </th>
            ))}
          </tr>
          <tr>
            {COLUMNS.flatMap(({ coordinates }) => coordinates).map((coordinate) => (
              <th key={coordinate} scope="col" className="numeric" data-coordinate={coordinate}>
                {say(`measure.${coordinate}`)}
                <span className="centimetre-step">
                  {isAngle(coordinate) ? say('centimetre.by-turn') : say('centimetre.by-place', { step })}
                </span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((quantity) => (
            <SlopeRow key={`${quantity.id} ${quantity.seat}`} quantity={quantity} derivatives={derivatives} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function SlopeRow(props: {
  quantity: Quantity;
  derivatives: Readonly<Partial<Record<string, readonly Derivative[]>>>;
}) {
  const { quantity, derivatives } = props;
  const format = useFormat();
  const { unit } = format.changeUnit(quantity);
  return (
    <tr data-quantity={quantity.id}>
      <th scope="row">
        {quantityName(quantity.id)} <span className="soft">{unit}</span>
      </th>
      {COLUMNS.flatMap(({ coordinates }) => coordinates).map((coordinate) => {
        const found = derivatives[coordinate]?.find((d) => d.id === quantity.id && d.seat === quantity.seat);
        const text = cellText(found, { step: tableStepOf(coordinate, format), format });
        const none = text === null || isNothing(text);
        return (
          <td key={coordinate} className={none ? 'numeric none' : 'numeric'}>
            {text === null ? '–' : none ? say('centimetre.nothing') : text}
          </td>
        );
      })}
    </tr>
  );
}
