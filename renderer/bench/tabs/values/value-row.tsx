import { useEffect, useRef, useState } from 'react';

import { SIGMAS_95, shownOf } from '../../../../core/evaluation/probability.ts';
import { isQuantityId, quantityDefinition } from '../../../../core/evaluation/quantities.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { halfText } from '../../../../core/text/signed-text.ts';
import { useFormat } from '../../../display/use-display.ts';
import { onLiveFrame } from '../../../document/live-frame.ts';
import { say, sayMessage, words } from '../../../language/messages.ts';
import { bandText, quantityName } from '../../../language/sentences.ts';
import { Term } from '../../../language/term.tsx';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { quantityText } from '../../quantity-text.ts';

import { HoldAngle, isHoldable } from './hold-angle.tsx';
import { LiveText } from './live-text.tsx';
import { OwnBand } from './own-band.tsx';
import { Tighten } from './tighten.tsx';

const quantityOf = (report: Report, id: string, seat: number | null) =>
  report.quantities.find((quantity) => quantity.id === id && quantity.seat === seat);
const findingOf = (report: Report, id: string, seat: number | null) =>
  report.findings.find((finding) => finding.quantity === id && finding.seat === seat);

/** One value: mark, name and number in a line; the rest opens under it. The number follows the hand. */
export function ValueRow({ id, seat }: { id: string; seat: number | null }) {
  const document = useDocument();
  const format = useFormat();
  const [open, setOpen] = useState(false);
  const finding = useFit(({ report }) => findingOf(report, id, seat));
  const item = useRef<HTMLLIElement>(null);
  useEffect(
    () =>
      onLiveFrame(document, (_, report) => {
        const severity = findingOf(report, id, seat)?.severity;
        if (severity && item.current) item.current.dataset.severity = severity;
      }),
    [document, id, seat],
  );
  return (
    <li ref={item} className="value" data-severity={finding?.severity} data-quantity={id}>
      <button type="button" className="value-line" aria-expanded={open} onClick={() => setOpen(!open)}>
        <SeverityMark />
        <span className="value-name">
          {quantityName(id)}
          {finding && <span className="only-spoken"> {say(`severity.${finding.severity}`)}</span>}
        </span>
        <LiveText
          className="value-number"
          write={(_, report) => {
            const quantity = quantityOf(report, id, seat);
            return quantity ? quantityText(quantity, format) : '–';
          }}
        />
      </button>
      {open && <ValueDetails id={id} seat={seat} />}
    </li>
  );
}

function ValueDetails({ id, seat }: { id: string; seat: number | null }) {
  const format = useFormat();
  const write = format.quantity(id);
  const quantity = useFit(({ report }) => quantityOf(report, id, seat));
  const finding = useFit(({ report }) => findingOf(report, id, seat));
  const definition = quantityDefinition(id);
  if (!quantity) return null;
  const { sd } = shownOf(quantity);
  const half = SIGMAS_95 * (sd ?? 0);
  const sure = sd
    ? say('values.sure.text', { half: halfText(half, quantity.unit, write, { half }) })
    : say('source.as-set');
  return (
    <div className="value-details">
      <dl>
        <dt>
          <Term term="band">{say('term.band')}</Term>
        </dt>
        <dd>{(finding && bandText(finding.band, finding.unit, write)) || say('values.no-band')}</dd>
        {finding && (
          <>
            <dt>{say('values.band-source')}</dt>
            <dd>
              {say('notes.source', {
                kind: say(`source-kind.${finding.band.source}`),
                source: sayMessage({ key: `band-source.${finding.band.sourceKey}` }),
              })}
              {finding.band.reason && ` ${say('notes.own-reason', { reason: finding.band.reason })}`}
            </dd>
          </>
        )}
        <dt>{say('values.sure')}</dt>
        <dd>
          {sure}
          <Tighten id={id} seat={seat} />
        </dd>
        {definition && (
          <>
            {words().has(`quantity.${id}.how`) && (
              <>
                <dt>{say('values.how')}</dt>
                <dd>{sayMessage({ key: `quantity.${id}.how` })}</dd>
              </>
            )}
            <dt>{say('values.source')}</dt>
            <dd>{say(`source.${definition.source}`)}</dd>
          </>
        )}
      </dl>
      {seat !== null && isHoldable(id) && <HoldAngle id={id} seat={seat} value={quantity.value} />}
      {finding && seat !== null && isQuantityId(id) && <OwnBand id={id} seat={seat} finding={finding} />}
    </div>
  );
}
