import type { Format } from '../../../../app/language/format.ts';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import { SIGMAS_95, shownOf } from '../../../../core/evaluation/probability.ts';
import type { QuantityId } from '../../../../core/evaluation/quantities.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { isYesOrNo } from '../../../../core/text/sentences.ts';
import { halfText } from '../../../../core/text/signed-text.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { bandText, quantityName } from '../../../language/sentences.ts';
import { inShownWords } from '../../../language/shown-words.tsx';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import { DataTable } from '../../../ui/table/data-table.tsx';
import { quantityText } from '../../quantity-text.ts';
import './crew.css';

/** Where a crew's bands look: the knee nearer the side, the pad partly on the hull, the room to the next paddler. */
export const PLACES = [
  'padOut',
  'padHeight',
  'padInsideHull',
  'kneeInsideHull',
  'restInsideHull',
  'footInsideHull',
  'toNextSeat',
  'bladeSpacing',
  'kneelsOnSide',
] as const satisfies readonly QuantityId[];

/** What the paddlers themselves are judged by. */
export const POSTURES = [
  'frontKnee',
  'kneelingKnee',
  'kneelingHip',
  'trunkPitch',
  'trunkRoll',
  'kneeShare',
  'rearShare',
  'frontShare',
  'supportMargin',
] as const satisfies readonly QuantityId[];

interface CrewBandsProps {
  readonly report: Report;
  readonly ids: readonly QuantityId[];
  /** Whether each value's uncertainty is written with it; there is no room for it in the margin. */
  readonly sure?: boolean;
}

/** Places and postures of every seat side by side, each with its mark; the band stands beside the name. */
export const CrewBands = inShownWords(({ report, ids, sure = false }: CrewBandsProps) => {
  const format = useFormat();
  const shown = ids
    .filter((id) => report.quantities.some((quantity) => quantity.id === id))
    .map((id) => ({ id, name: quantityName(id) }));
  return (
    <DataTable
      className="crew-table crew-bands"
      caption={say('crew.bands.caption')}
      captionHidden
      rows={shown}
      rowKey={({ id }) => id}
      columns={[
        {
          title: say(sure ? 'crew.bands.what.sure' : 'crew.bands.what'),
          isName: true,
          cell: ({ id, name }) => (
            <>
              {name}
              <Band id={id} report={report} format={format} />
            </>
          ),
        },
        ...report.seats.map((_, seat) => ({
          title: say('new-fit.seat', { number: seat + 1 }),
          cellMarks: ({ id }: NamedRow) => ({
            'data-severity': findingOf(report, id, seat)?.severity,
            title: halfOf({ id, report, format }, seat) || undefined,
          }),
          cell: ({ id }: NamedRow) => <Judged seat={seat} sure={sure} {...{ id, report, format }} />,
        })),
      ]}
    />
  );
});

interface NamedRow {
  readonly id: QuantityId;
  readonly name: string;
}

interface Row {
  readonly id: QuantityId;
  readonly report: Report;
  readonly format: Format;
}

function findingOf(report: Report, id: QuantityId, seat: number): Finding | undefined {
  return report.findings.find((finding) => finding.quantity === id && finding.seat === seat);
}

/** The band that most of the row is judged by; a seat with its coach's own band says so in its cell. */
const Band = inShownWords(({ id, report, format }: Row) => {
  const finding = report.findings.find((f) => f.quantity === id && f.band.source !== "coach's own");
  const band = finding && !isYesOrNo(id) && bandText(finding.band, finding.unit, format.quantity(id));
  return band ? <span className="crew-band">{band}</span> : null;
});

/** Half the width of a value's 95 % interval, in words; empty where there is none to tell. */
function halfOf({ id, report, format }: Row, seat: number): string {
  const quantity = report.quantities.find((q) => q.id === id && q.seat === seat);
  const sd = quantity && shownOf(quantity).sd;
  if (!sd || isYesOrNo(id)) return '';
  const half = SIGMAS_95 * sd;
  return say('crew.bands.sure', { half: halfText(half, quantity.unit, format.quantity(id), { half }) });
}

const Judged = inShownWords(({ id, seat, report, format, sure }: Row & { seat: number; sure: boolean }) => {
  const quantity = report.quantities.find((q) => q.id === id && q.seat === seat);
  if (!quantity) return '–';
  const finding = findingOf(report, id, seat);
  const write = format.quantity(id);
  const own = finding?.band.source === "coach's own" ? bandText(finding.band, finding.unit, write) : '';
  const half = halfOf({ id, report, format }, seat);
  return (
    <>
      {finding && <SeverityMark />}
      {quantityText(quantity, format)}
      {sure && half && <span className="crew-half"> {half}</span>}
      {finding && <span className="only-spoken"> {say(`severity.${finding.severity}`)}</span>}
      {own && <span className="crew-band">{say('crew.bands.own', { band: own })}</span>}
    </>
  );
});
