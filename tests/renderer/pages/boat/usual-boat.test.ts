import { describe, expect, it } from 'vitest';
import { boatSchema } from '../../../../core/document/boat-schema.ts';
import { withBoatChange } from '../../../../renderer/pages/boat/boat-changes.ts';
import { boatRules } from '../../../../renderer/pages/boat/boat-rules.ts';
import { type BoatValues, boatValues } from '../../../../renderer/pages/boat/boat-values.ts';
import { readForm } from '../../../../renderer/ui/form/form-rules.ts';

const begin = boatValues(null);
const changed = (values: BoatValues, part: Partial<BoatValues>, isNew = true): BoatValues => ({
  ...values,
  ...withBoatChange(values, part, isNew),
});

function boatOf(values: BoatValues) {
  const read = readForm(boatRules(null), values);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.document;
}

describe('a boat known by its class', () => {
  it('needs nothing but a name', () => {
    const boat = boatOf({ ...begin, name: 'No. 4' });
    expect(boat).toEqual(boatSchema.parse(boat));
    // ICF canoe sprint rules: a C1 is at most 5.20 m long and weighs at least 14 kg.
    expect(boat).toMatchObject({ boatClass: 'C1', massKg: 14, hull: { kind: 'usual', lengthM: 5.2 } });
    expect(boat.seats).toHaveLength(1);
  });

  it.each([
    ['C2', 2],
    ['C4', 4],
    ['training', 1],
  ] as const)('takes the numbers and the seats of a %s', (usualClass, seats) => {
    const boat = boatOf({ ...changed(begin, { usualClass }), name: 'Ours' });
    expect(boat.seats).toHaveLength(seats);
    expect(boat.boatClass).toBe(usualClass === 'training' ? 'none' : usualClass);
    expect(boat.hull).toMatchObject({ kind: 'usual', boatClass: usualClass });
  });

  it('moves seats and floorboard with the length until somebody has set them', () => {
    const shorter = changed(begin, { lengthM: 4.9 });
    expect(shorter.seatsFromSternM[0]).toBeCloseTo(2.45, 6);
    const marked = changed(shorter, { seatsFromSternM: [2.3] });
    expect(changed(marked, { lengthM: 5.1 }).seatsFromSternM).toEqual([2.3]);
  });

  it('keeps what is filled in while a number is missing', () => {
    const open = changed(begin, { lengthM: null });
    expect(open.floorboard).toEqual(begin.floorboard);
    const read = readForm(boatRules(null), { ...open, name: 'x' });
    expect(!read.ok && read.problems.hull).toBe('Needed: length, greatest beam.');
  });

  it('begins from empty entries where a new boat is measured, and keeps those of an old one', () => {
    const measured = changed(begin, { hullKind: 'tape' });
    expect(measured).toMatchObject({ lengthM: null, massKg: null, seatsFromSternM: [null], boatClass: 'C1' });
    expect(changed(measured, { hullKind: 'usual' })).toMatchObject({ lengthM: 5.2, massKg: 14 });
    expect(changed(begin, { hullKind: 'tape' }, false).massKg).toBe(14);
  });

  it('has the seats of its racing class when measured, too', () => {
    const measured = changed(begin, { hullKind: 'tape' });
    expect(changed(measured, { boatClass: 'C4' }).seatsFromSternM).toHaveLength(4);
    expect(changed(measured, { boatClass: 'none' }).seatsFromSternM).toHaveLength(1);
  });
});
