import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../app/language/format.ts';
import type { Boat } from '../../../../core/document/boat-schema.ts';
import { createEvaluator } from '../../../../core/evaluation/evaluator.ts';
import { transferFit } from '../../../../core/transfer/transfer-fit.ts';
import { shiftSentences } from '../../../../renderer/pages/transfer/shift-sentences.ts';
import { SEAT_GROUPS, transferRows } from '../../../../renderer/pages/transfer/transfer-rows.ts';
import { exampleBoat, exampleFit } from '../../../core/example/example-fit.ts';
import { notEmpty } from '../../../not-empty.ts';

const evaluator = createEvaluator();
const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const fit = exampleFit();
const plain = (text: string) => text.replaceAll('\u{202f}', ' ');

function into(boat: Boat) {
  return { old: { fit, report: evaluator.evaluate(fit) }, moved: transferFit(evaluator, fit, boat) };
}

/** The example hull, fuller toward one end, so that it floats at another trim. */
function fuller(share: number): Boat {
  const boat = exampleBoat();
  if (boat.hull.kind !== 'tape') throw new Error('the example is taped');
  const stations = boat.hull.stations.map((s) => ({
    ...s,
    sheerBeamM: s.sheerBeamM * (1 + share * s.xM),
    beams: s.beams.map((b) => ({ ...b, beamM: b.beamM * (1 + share * s.xM) })),
  }));
  return { ...boat, name: 'Other', hull: { ...boat.hull, stations } };
}

describe('what another hull asks for, in words', () => {
  it('names the shift and its way: aft where the stern is fuller than it was, forward where the bow is', () => {
    for (const share of [-0.05, 0.05]) {
      const answer = into(fuller(share));
      const [sentence] = shiftSentences(answer, format);
      const { shiftAft } = answer.moved.trimKept!;
      expect(plain(sentence!)).toContain(share < 0 ? ' aft in Other' : ' forward in Other');
      expect(plain(sentence!)).toContain(`${(Math.abs(shiftAft) * 100).toFixed(1)} cm`);
    }
  });

  it('says that nothing is to be shifted in the same hull', () => {
    expect(shiftSentences(into({ ...exampleBoat(), name: 'Twin' }), format)[0]).toContain(
      'with nothing moved',
    );
  });

  it('says how far the nearest holes are from the trim', () => {
    const boat = fuller(-0.05);
    const hardware = { ...boat.hardware, padHolePitchM: 0.05, restHolePitchM: 0.05 };
    expect(shiftSentences(into({ ...boat, hardware }), format)).toHaveLength(2);
  });
});

describe('the table side by side', () => {
  const { old, moved } = into(fuller(-0.05));
  const reports = [old.report, moved.asIs.report, moved.trimKept!.report];

  it('holds each value as the report has it, with what its finding says', () => {
    const rows = transferRows(reports, { seat: null, format });
    const trim = rows.find(({ id }) => id === 'trimRest')!;
    expect(trim.cells[0]!.text).toBe(trim.cells[2]!.text);
    expect(trim.cells[1]!.text).not.toBe(trim.cells[0]!.text);
    const finding = old.report.findings.find((f) => f.quantity === 'trimRest')!;
    expect(trim.cells[0]!.severity).toBe(finding.severity);
  });

  it('keeps the stance in every column', () => {
    const rows = transferRows(reports, { ids: SEAT_GROUPS.stance, seat: 0, format });
    for (const { id, cells } of notEmpty(rows)) {
      expect(cells.length).toBeGreaterThan(1);
      expect(new Set(cells.map(({ text }) => text)).size, id).toBe(1);
    }
  });

  it('leaves out what no report has', () => {
    expect(transferRows(reports, { ids: SEAT_GROUPS.setting, seat: 3, format })).toEqual([]);
  });
});
