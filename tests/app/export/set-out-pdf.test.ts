import { describe, expect, it } from 'vitest';
import { setOutPdf } from '../../../app/export/set-out-pdf.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { toFloor } from '../../../core/setout/block-frame.ts';
import { STANDING_CAUTIONS } from '../../../core/setout/caution-sentences.ts';
import { orderOfWork } from '../../../core/setout/order-of-work.ts';
import { padCorners } from '../../../core/setout/pad-block.ts';
import { PAPER_NAMES, PAPERS, type PaperName } from '../../../core/setout/paper.ts';
import {
  inventedSetOut,
  ON_A_WEDGE,
  ROWS_OF_HOLES,
  type Wanted,
} from '../../core/setout/invented-set-out.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { finished, inventedStamp } from './invented-stamp.ts';
import { readPdf } from './read-pdf.ts';

/** At 1:10 a template's 0.05 mm would be half a millimetre of wood; the drawing is to look at, the tables to work by. */
const DRAWN_TOLERANCE_MM = 0.05;

function printed(paper: PaperName, wanted: Wanted = {}) {
  const out = inventedSetOut({ hardware: ROWS_OF_HOLES, ...wanted });
  const hull = hullOfBoat(out.work.boat);
  const { made, steps } = finished(setOutPdf(out, { hull, paper, stamp: inventedStamp() }));
  const file = readPdf(made.bytes);
  const words = file.pages.map(({ texts }) => texts.map(({ text }) => text).join(' ')).join(' ');
  return { out, file, words, steps, bytes: made.bytes };
}

const distance = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);

describe.each(PAPER_NAMES)('set-out sheet on %s', (paper) => {
  const { out, file, words, steps } = printed(paper);

  it('lies on that paper and says its scale, paper and units', () => {
    for (const { width, height } of file.pages) {
      expect(width).toBeCloseTo(PAPERS[paper].long, 3);
      expect(height).toBeCloseTo(PAPERS[paper].short, 3);
    }
    expect(words).toMatch(new RegExp(`drawing 1:\\d+ on ${paper}`));
    expect(words).toContain('millimetres');
    expect(steps).toBe(file.pages.length);
  });

  it('draws the pad block in plan at the scale it says', () => {
    const scale = 1 / Number(/drawing 1:(\d+)/.exec(words)![1]);
    const { pad } = out.fittings;
    const corners = padCorners(pad).map((corner) => toFloor(pad.place, corner));
    const ring = [...corners, corners[0]!].map(([x, y]) => [x * scale, y * scale] as const);
    const found = file.pages[0]!.paths.some(
      ({ points }) =>
        points.length === ring.length &&
        points.every((p, k) => {
          const [dx, dy] = [p[0] - points[0]![0], p[1] - points[0]![1]];
          const wanted = [ring[k]![0] - ring[0]![0], ring[k]![1] - ring[0]![1]];
          return distance([dx, dy], wanted) < DRAWN_TOLERANCE_MM;
        }),
    );
    expect(found).toBe(true);
  });

  it('ties the views: K lies above K in plan and profile', () => {
    // Dots are filled rounds of little more than a millimetre.
    const dots = file.pages[0]!.paths.filter(({ painted, points }) => {
      return painted === 'fill' && points.every((point) => distance(point, points[0]!) < 1.2);
    });
    const xs = dots.map(({ points }) => Math.min(...points.map(([x]) => x)));
    const twice = xs.filter((x, k) => xs.some((other, j) => j !== k && Math.abs(other - x) < 0.01));
    expect(twice.length).toBeGreaterThanOrEqual(2);
  });

  it('prints every mark, check, height, angle, step and caution', () => {
    const flat = words.replaceAll(/\s+/g, ' ');
    for (const { name, forwardMm, portMm } of notEmpty(out.marks.slice(1))) {
      expect(flat).toContain(name);
      if (forwardMm !== 0)
        expect(flat).toContain(`${Math.abs(forwardMm)} ${forwardMm > 0 ? 'forward' : 'aft'}`);
      if (portMm !== 0) expect(flat).toContain(`${Math.abs(portMm)} ${portMm > 0 ? 'left' : 'right'}`);
    }
    for (const { from, to, lengthMm } of notEmpty(out.checks))
      expect(flat).toContain(`${from} – ${to} ${lengthMm}`);
    for (const { deg } of notEmpty(out.angles)) expect(flat).toContain(`${deg.toFixed(1)}°`);
    for (const sentence of [...orderOfWork(out), ...STANDING_CAUTIONS.map((key) => english.say(key))]) {
      for (const part of sentence.split(/\s+/)) expect(flat).toContain(part);
    }
  });

  it('lists the holes and marks those of this setting', () => {
    for (const { rows } of notEmpty(out.holes)) {
      for (const { at, number } of rows[0]!.holes) {
        const along = Math.round(at[0]);
        if (along !== 0)
          expect(words).toContain(`${number} ${Math.abs(along)} ${along > 0 ? 'forward' : 'aft'}`);
      }
    }
  });

  it('says who it is for, which revision and of when', () => {
    for (const { texts } of notEmpty(file.pages)) {
      const page = texts.map(({ text }) => text).join('');
      expect(page).toContain('Žofie Łuczak');
      expect(page).toContain('Heron 4');
      expect(page).toContain('revision 7, pad back');
      expect(page).toContain('2026-05-04');
    }
  });

  it('keeps every word on its page', () => {
    for (const { texts, width, height } of notEmpty(file.pages)) {
      for (const { at } of texts) {
        expect(at[0]).toBeGreaterThan(8);
        expect(at[0]).toBeLessThan(width - 8);
        expect(at[1]).toBeGreaterThan(8);
        expect(at[1]).toBeLessThan(height - 8);
      }
    }
  });
});

describe('a set-out sheet', () => {
  it('is the same to the byte for equal input, and another for another', () => {
    expect(Buffer.compare(printed('A4').bytes, printed('A4').bytes)).toBe(0);
    expect(Buffer.compare(printed('A4').bytes, printed('A4', { side: 'right' }).bytes)).not.toBe(0);
  });

  it('writes inches to the nearest 1/32 where asked', () => {
    const { words } = printed('Letter', { options: { units: 'in' } });
    expect(words).toContain('6 7/8 aft');
    expect(words).toContain('inches to 1/32');
  });

  it('comes out whole with a wedge, without holes, and for the other side', () => {
    for (const wanted of [
      { seat: { frontFoot: ON_A_WEDGE } },
      { hardware: {} },
      { side: 'right' as const },
    ]) {
      expect(printed('A4', wanted).file.pages.length).toBeGreaterThan(1);
    }
  });

  it('never says that anything is safe', () => {
    expect(printed('A4').words).not.toMatch(/\bsafe/i);
  });
});
