import { describe, expect, it } from 'vitest';
import { loadMessages } from '../../../app/language/messages.ts';
import { translator } from '../../../app/language/translator.ts';
import { restEndsTemplate } from '../../../core/setout/end-templates.ts';
import { lettersWidth } from '../../../core/setout/letter-widths.ts';
import { frontWedgeTemplate, rearRestTemplate } from '../../../core/setout/rest-templates.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from './invented-set-out.ts';
import {
  areaOf,
  boxOf,
  circlesOn,
  dimensionsOf,
  distance,
  lettersOf,
  linesOn,
  textsOf,
} from './read-shapes.ts';

const DEG = Math.PI / 180;
const out = inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE } });
const rest = rearRestTemplate(out);
const wedge = frontWedgeTemplate(out)!;

describe('the template of the rear rest', () => {
  const [base, profile, face] = linesOn(rest.shapes, 'outline').map(({ points }) => points);
  const ahead = 50 / Math.tan(60 * DEG);

  it('has base, profile and face at full size, by the wedge’s trigonometry', () => {
    const depth = out.fittings.rest.depthBehind;
    expect(Math.abs(areaOf(base!))).toBeCloseTo(140 * (depth + ahead), 6);
    expect(Math.abs(areaOf(profile!))).toBeCloseTo(50 * (depth + ahead / 2), 6);
    expect(Math.abs(areaOf(face!))).toBeCloseTo((140 * 50) / Math.sin(60 * DEG), 6);
  });

  it('has its bearing edge across the whole base, as far from its aft side as the top is deep', () => {
    const [edge] = linesOn(rest.shapes, 'edge');
    expect(distance(edge!.points[0]!, edge!.points[1]!)).toBeCloseTo(140, 9);
    expect(edge!.points[0]![0] - boxOf(base!).left).toBeCloseTo(out.fittings.rest.depthBehind, 9);
  });

  it('writes its sizes and its angle', () => {
    const figures = dimensionsOf(rest.shapes).map(({ text }) => text);
    expect(figures).toEqual(expect.arrayContaining(['140', '50', '58']));
    expect(textsOf(rest.shapes)).toEqual(expect.arrayContaining(['60°', 'R1', 'R2']));
  });

  it('dimensions what it says: each figure is the distance between its ends', () => {
    for (const { from, to, text } of notEmpty(dimensionsOf(rest.shapes))) {
      expect(Math.round(distance(from, to))).toBe(Number(text));
    }
  });

  it('has its bolts inside its base, where the floorboard has them', () => {
    const bolts = circlesOn(rest.shapes, 'drillNow');
    expect(bolts).toHaveLength(2);
    const { left, right, low, high } = boxOf(base!);
    for (const { centre } of bolts) {
      expect(centre[0]).toBeGreaterThan(left);
      expect(centre[0]).toBeLessThan(right);
      expect(centre[1]).toBeGreaterThan(low);
      expect(centre[1]).toBeLessThan(high);
    }
    const [a, b] = out.holes[1]!.bolts;
    expect(distance(bolts[0]!.centre, bolts[1]!.centre)).toBeCloseTo(distance(a!, b!), 9);
  });
});

describe('the template of the front wedge', () => {
  it('is none where the foot stands on the floor', () => {
    expect(frontWedgeTemplate(inventedSetOut())).toBeNull();
  });

  it('has a profile that rises by its slope, and a plan as long', () => {
    const [profile, plan] = linesOn(wedge.shapes, 'outline').map(({ points }) => points);
    const { left, right } = boxOf(profile!);
    const top = profile!.filter(([, y]) => y > 0).sort((a, b) => a[0] - b[0]);
    const rise = (top.at(-1)![1] - top[0]![1]) / (top.at(-1)![0] - top[0]![0]);
    expect(Math.atan(rise) / DEG).toBeCloseTo(5, 6);
    expect(boxOf(plan!).left).toBeCloseTo(left, 9);
    expect(boxOf(plan!).right).toBeCloseTo(right, 9);
    expect(boxOf(plan!).low).toBeGreaterThan(boxOf(profile!).high);
  });

  it('dimensions what it says', () => {
    for (const { from, to, text } of notEmpty(dimensionsOf(wedge.shapes))) {
      expect(Math.abs(distance(from, to) - Number(text))).toBeLessThanOrEqual(0.5);
    }
  });
});

describe.each(['en', 'de', 'hu', 'es', 'pl', 'zh'] as const)('the rest’s ends in %s', async (language) => {
  const words = translator(language, await loadMessages(language));

  it('are told how to be sawn beside the line that is sawn, not over it', () => {
    const ends = restEndsTemplate(inventedSetOut({ seat: { frontFoot: ON_A_WEDGE }, words }))!;
    const how = lettersOf(ends.shapes).find(({ text }) => /\d\smm/.test(text));
    const [x, y] = how!.at;
    const [outline] = linesOn(ends.shapes, 'outline');
    const end = x + lettersWidth(how!.text) * how!.height;
    const cut = outline!.points.filter(([right, up]) => right > x + 10 && up > y);
    for (const [right] of notEmpty(cut)) expect(end).toBeLessThan(right);
  });
});
