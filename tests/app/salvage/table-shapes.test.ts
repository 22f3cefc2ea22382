import { describe, expect, it } from 'vitest';
import { TABLE_SHAPES } from '../../../app/salvage/table-shapes.ts';
import { guardedTables } from '../../../app/store/row-guard.ts';
import { temporaryStore } from '../temporary.ts';

describe('the looks of rows by which a salvage knows their tables', () => {
  it('are there for every table with a person’s work in it, with its columns in the file’s order', () => {
    const { db } = temporaryStore();
    const guarded = guardedTables(db);
    expect(TABLE_SHAPES.map(({ name }) => name).sort()).toEqual(guarded.map(({ name }) => name).sort());
    for (const { name, columns } of guarded) {
      const shape = TABLE_SHAPES.find((one) => one.name === name)!;
      expect(
        shape.columns.map((column) => column.name),
        name,
      ).toEqual(columns);
    }
  });
});
