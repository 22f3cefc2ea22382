import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contentOfLeaves, leavesOfContent } from '../../../app/changes/record-content.ts';
import { RECORD_KINDS } from '../../../app/changes/record-shapes.ts';
import { RECORD_SCHEMAS } from '../../../app/store/record-rows.ts';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import { arbitraryObjectOf } from '../fuzz/arbitrary-of.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';

const LIMITS = [
  { joint: 'trunkForward', maxDeg: 20, reason: 'back' },
  { joint: 'frontKneeFlexion', maxDeg: 110, reason: 'knee' },
];

/** Two documents of one schema: sound ones, with fields that their schemas allow put in. */
function documents(kind: (typeof RECORD_KINDS)[number]): fc.Arbitrary<object> {
  const sound = { athlete: inventedAthlete(), boat: inventedBoat(), fit: inventedFit() };
  const base = kind in sound ? sound[kind as keyof typeof sound] : {};
  return arbitraryObjectOf(RECORD_SCHEMAS[kind])
    .map((parts) => ({ ...base, ...parts }))
    .filter((document) => RECORD_SCHEMAS[kind].safeParse(document).success)
    .map((document) => RECORD_SCHEMAS[kind].parse(document) as object);
}

describe('a record', () => {
  it.each(RECORD_KINDS)('%s comes together again as it was taken apart', (kind) => {
    fc.assert(
      fc.property(documents(kind), (document) => {
        const leaves = leavesOfContent(kind, { document });
        const again = RECORD_SCHEMAS[kind].parse(contentOfLeaves(kind, leaves).document) as object;
        expect(leavesOfContent(kind, { document: again })).toEqual(leaves);
      }),
      { numRuns: 200 },
    );
  });

  it.each(RECORD_KINDS)('%s of which each field is taken from one of two is sound', (kind) => {
    const pick = fc.infiniteStream(fc.boolean());
    fc.assert(
      fc.property(documents(kind), documents(kind), pick, (one, other, side) => {
        const [a, b] = [one, other].map((document) => leavesOfContent(kind, { document })) as [
          Map<string, string>,
          Map<string, string>,
        ];
        const mixed = new Map<string, string>();
        for (const path of new Set([...a.keys(), ...b.keys()])) {
          // A field that only one side has: a removal and a value meet, and the value stands.
          const value = (side.next().value ? a : b).get(path) ?? a.get(path) ?? b.get(path);
          mixed.set(path, value!);
        }
        const document = contentOfLeaves(kind, mixed).document;
        expect(RECORD_SCHEMAS[kind].safeParse(document).error?.issues ?? []).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it('keeps limits, bands and stock by what they are of, not by their place in the list', () => {
    const one = leavesOfContent('athlete', {
      document: athleteSchema.parse({ ...inventedAthlete(), limits: LIMITS }),
    });
    const turned = athleteSchema.parse({ ...inventedAthlete(), limits: [...LIMITS].reverse() });
    expect(leavesOfContent('athlete', { document: turned })).toEqual(one);
    expect([...one.keys()].filter((path) => path.startsWith('limits'))).toEqual([
      'limits/trunkForward',
      'limits/frontKneeFlexion',
    ]);
  });

  it('keeps two pieces of stock of one name apart, and names with strokes in them', () => {
    const pad = {
      name: 'A/B ~1',
      lengthM: 0.3,
      widthM: 0.2,
      heightM: 0.05,
      recessDepthM: 0.01,
      foamGiveM: 0.01,
    };
    const boat = boatSchema.parse({ ...inventedBoat(), stock: { pads: [pad, { ...pad, heightM: 0.07 }] } });
    const again = contentOfLeaves('boat', leavesOfContent('boat', { document: boat })).document;
    expect(boatSchema.parse(again).stock?.pads.map(({ name, heightM }) => [name, heightM])).toEqual([
      ['A/B ~1', 0.05],
      ['A/B ~1', 0.07],
    ]);
  });
});
