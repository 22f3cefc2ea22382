import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { captionsOf } from '../../../../renderer/drawing/layers/captions.ts';
import { drawingLabels } from '../../../../renderer/drawing/layers/drawing-labels.ts';
import { labelObstacles, viewButtonRoom } from '../../../../renderer/drawing/layers/label-obstacles.ts';
import {
  crosses,
  overlap,
  type PlacedLabel,
  placeLabels,
} from '../../../../renderer/drawing/view/label-placer.ts';
import type { Scene } from '../../../../renderer/drawing/view/scene.ts';
import { project } from '../../../../renderer/drawing/view/view-geometry.ts';
import { cases, LONG } from '../../../cases.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../../../core/example/example-fit.ts';
import { drawnScene, roughWidth } from '../view/drawn-scene.ts';

const SEED = 20261125;

/** The drawing's own part of windows of 1024 × 700 (the smallest), 1280 × 800 and 1920 × 1080. */
const SHEETS = [
  { width: 663, height: 658 },
  { width: 919, height: 758 },
  { width: 1488, height: 1038 },
];

/** What a coach reads first: these are always on the drawing. */
const ESSENTIAL = [
  'frontKnee',
  'kneelingKnee',
  'kneelingHip',
  'trunkPitch',
  'trunkRoll',
  'load-knee',
  'load-rearFoot',
  'load-frontFoot',
];

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Settings far beyond good ones: whatever a hand can pull. */
const anyFit: fc.Arbitrary<Fit> = fc
  .record({
    statureM: between(1.4, 2.05),
    massKg: between(38, 110),
    side: fc.constantFrom('left' as const, 'right' as const),
    padAftM: between(0, 0.4),
    padOutM: between(-0.02, 0.14),
    padHeightM: between(0.04, 0.24),
    restAftM: between(0.4, 0.9),
    restOutM: between(-0.2, 0.1),
    forwardM: between(0.1, 0.7),
    footOutM: between(-0.2, 0.05),
  })
  .map((given) => {
    const seat = exampleSeat();
    const { statureM, massKg, side } = given;
    return exampleFit([
      exampleSeat({
        athlete: exampleAthlete({ statureM, massKg, side }),
        side,
        kneePad: {
          ...seat.kneePad,
          aftM: given.padAftM,
          outM: given.padOutM,
          heightM: given.padHeightM,
        },
        rearRest: { ...seat.rearRest, aftM: given.restAftM, outM: given.restOutM },
        frontFoot: { ...seat.frontFoot, forwardM: given.forwardM, outM: given.footOutM },
      }),
    ]);
  });

function placed(scene: Scene): { wanted: string[]; labels: PlacedLabel[] } {
  const wishes = drawingLabels(scene, roughWidth);
  const labels = placeLabels(wishes, labelObstacles(scene, { measure: roughWidth, leaders: [] }));
  return { wanted: wishes.map(({ id }) => id), labels };
}

function expectClear(scene: Scene, labels: readonly PlacedLabel[]): void {
  const captions = captionsOf(scene, (text) => roughWidth(text, 'caption'));
  labels.forEach((a, k) => {
    for (const b of labels.slice(k + 1)) {
      expect(overlap(a.rect, b.rect), `${a.id} on ${b.id}`).toBe(false);
      if (a.leader) expect(crosses(a.leader, b.rect), `${a.id}'s leader through ${b.id}`).toBe(false);
      if (b.leader) expect(crosses(b.leader, a.rect), `${b.id}'s leader through ${a.id}`).toBe(false);
    }
    expect(overlap(a.rect, viewButtonRoom(scene)), `${a.id} beside the view's buttons`).toBe(false);
    for (const { rect, words } of captions) expect(overlap(a.rect, rect), `${a.id} on ${words}`).toBe(false);
  });
}

describe('labels of the drawing', () => {
  it.each(SHEETS)('the example on $width × $height has all of them', (size) => {
    const scene = drawnScene(exampleFit(), size);
    const { wanted, labels } = placed(scene);
    expect(wanted).toEqual(expect.arrayContaining(ESSENTIAL));
    expect(labels.map(({ id }) => id).sort()).toEqual([...wanted].sort());
    expectClear(scene, labels);
  });

  it.each(SHEETS)('no setting that a hand can pull drops or collides one on $width × $height', (size) => {
    console.log(`seed ${SEED}`);
    fc.assert(
      fc.property(fc.noShrink(anyFit), (fit) => {
        const scene = drawnScene(fit, size);
        const { wanted, labels } = placed(scene);
        expect(wanted).toEqual(expect.arrayContaining(ESSENTIAL));
        expect(labels.map(({ id }) => id).sort()).toEqual([...wanted].sort());
        expectClear(scene, labels);
      }),
      { seed: SEED, numRuns: cases(4, 40) },
    );
  });

  it('a name in a crew lies beside a head that fills the sheet, not on it', () => {
    const athlete = exampleAthlete({ statureM: 1.86, massKg: 80 });
    const crew = exampleFit([exampleSeat({ athlete }), exampleSeat({ athlete, side: 'right' })]);
    for (const size of SHEETS) {
      const scene = drawnScene(crew, size);
      const { rect } = placed(scene).labels.find(({ id }) => id === 'name-0')!;
      const { at, height } = scene.picture.figures[0]!.head;
      const { x, y } = project(scene.geometry, 'profile', at);
      const half = (0.8 * height * scene.geometry.camera.pixelsPerMetre) / 2;
      expect(overlap(rect, { left: x - half, top: y - half, width: 2 * half, height: 2 * half })).toBe(false);
    }
  });

  it('the whole of a four has every name and the loads of the seat worked on', () => {
    const names = ['Ada', 'Berit', 'Chidi', 'Dunja'];
    const sides = ['left', 'right', 'left', 'right'] as const;
    const fit = exampleFit(
      names.map((name, k) => exampleSeat({ side: sides[k]!, athlete: exampleAthlete({ name }) })),
    );
    for (const [i, size] of SHEETS.entries()) {
      // The quick run works on another seat on each sheet.
      for (const seat of LONG ? [0, 1, 2, 3] : [i]) {
        const scene = drawnScene(fit, size, { seat, showing: 'boat' });
        const { wanted, labels } = placed(scene);
        const named = names.map((_, k) => `name-${k}`);
        expect(wanted).toEqual(expect.arrayContaining([...named, 'load-knee']));
        expect(labels.map(({ id }) => id).sort()).toEqual([...wanted].sort());
        expectClear(scene, labels);
      }
    }
  });
});
