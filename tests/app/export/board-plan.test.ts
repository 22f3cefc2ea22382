import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { exportWork } from '../../../app/export/export-file.ts';
import { LAYER_STYLES } from '../../../app/export/layer-styles.ts';
import type { BoardPlan } from '../../../core/setout/board-plan.ts';
import { paddlerLayer } from '../../../core/setout/board-plan-drawing.ts';
import { inventedFit } from '../../core/setout/invented-set-out.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { finished } from './invented-stamp.ts';
import { readPdf, wordsOf } from './read-pdf.ts';

// It has no types that fit modules.
const DxfParser = createRequire(import.meta.url)('dxf-parser') as new () => {
  parseSync(text: string): {
    entities: { type: string; layer: string; radius: number; center: { x: number; y: number } }[];
  };
};

const hole = (number: number, xM: number, yM: number, letters: string[]) => ({
  number,
  xM,
  yM,
  diameterM: 0.0065,
  drilled: number % 2 === 0,
  letters,
});

const PLAN: BoardPlan = {
  holes: [
    hole(1, -0.18, 0.08, ['A', 'B']),
    hole(2, -0.18, -0.01, ['A', 'B']),
    hole(3, -0.65, -0.03, ['A']),
    hole(4, -0.65, -0.1, ['A']),
  ],
  people: [
    { letter: 'A', name: 'Žofie Łuczak', pad: [1, 2], rest: [3, 4] },
    { letter: 'B', name: 'Ben Ashdown', pad: [1, 2], rest: [] },
  ],
  unused: [{ xM: -0.4, yM: 0.05, diameterM: 0.0065, state: 'plugged' }],
};

function made(what: 'floorboard' | 'card', format: 'pdf' | 'svg' | 'dxf', plan = PLAN) {
  const work = exportWork(
    {
      language: 'en',
      fit: inventedFit(),
      revision: { number: null, name: '', mark: '', keptAt: '2026-05-04T16:20:00Z' },
      wanted: { kind: 'board-plan', seat: 0, what, format, paper: 'A4', plan },
    },
    english,
  );
  return finished(work!.steps).made;
}

describe('the floorboard for everybody', () => {
  it('has every hole in its place at full size, and a ring for each who uses it, on a layer of their own', () => {
    const file = made('floorboard', 'dxf');
    const { entities } = new DxfParser().parseSync(new TextDecoder().decode(file.bytes));
    const circles = entities.filter(({ type }) => type === 'CIRCLE');
    for (const { xM, yM, diameterM, drilled, letters } of notEmpty(PLAN.holes)) {
      const here = circles.filter(
        ({ center }) => Math.hypot(center.x - 1000 * xM, center.y - 1000 * yM) < 1e-3,
      );
      const drills = here.filter(({ layer }) => layer === (drilled ? 'DRILL' : 'DRILL-NOW'));
      expect(drills.map(({ radius }) => radius)).toEqual([500 * diameterM]);
      const rings = here.filter(({ layer }) => layer.startsWith('PADDLER-')).map(({ layer }) => layer);
      expect(rings).toEqual(letters.map((letter) => `PADDLER-${letter}`));
    }
  });

  it('writes number and letters, and crosses out what is plugged', () => {
    const words = readPdf(made('floorboard', 'pdf').bytes).pages.flatMap((page) => wordsOf(page).split(' '));
    for (const text of ['1', '2', '3', '4', 'A', 'B']) expect(words).toContain(text);
    expect(new TextDecoder().decode(made('floorboard', 'svg').bytes)).toContain('PADDLER-A');
  });

  it('tells the first six apart by colour', () => {
    const inks = new Set(Array.from({ length: 6 }, (_, k) => LAYER_STYLES[paddlerLayer(k)].ink));
    expect(inks.size).toBe(6);
  });
});

describe('the change-over card', () => {
  it('names everybody with the holes of pad and rest, on one page', () => {
    const file = made('card', 'pdf');
    expect(file.name).toBe('Change-over card, Example hull.pdf');
    const { pages } = readPdf(file.bytes);
    expect(pages).toHaveLength(1);
    const { texts } = pages[0]!;
    const rowOf = (letter: string) => {
      const { at } = texts.find(({ text }) => text === letter)!;
      const inRow = texts.filter((other) => Math.abs(other.at[1] - at[1]) < 2);
      return inRow.map(({ text }) => text).join(' ');
    };
    expect(rowOf('A')).toMatch(/A .*ofie .*uczak 1 {3}2 3 {3}4/);
    expect(rowOf('B')).toMatch(/B Ben Ashdown 1 {3}2 –/);
  });

  it('says where on the rails a fitting stands that needs no hole', () => {
    const people = [{ ...PLAN.people[1]!, pad: [], padRailsXM: -0.215 }];
    const words = wordsOf(readPdf(made('card', 'pdf', { ...PLAN, people }).bytes).pages[0]!);
    expect(words).toContain('rails, 215 aft');
  });

  it('goes on over as many pages as a club needs, nobody left out', () => {
    const people = Array.from({ length: 19 }, (_, k) => ({
      ...PLAN.people[0]!,
      letter: String.fromCharCode(65 + k),
      name: `Paddler ${k + 1}`,
    }));
    const { pages } = readPdf(made('card', 'pdf', { ...PLAN, people }).bytes);
    const words = pages.map(wordsOf).join(' ');
    expect(pages.length).toBeGreaterThan(1);
    for (const { name } of people) expect(words).toContain(name);
  });
});
