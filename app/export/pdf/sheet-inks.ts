import { PADDLER_INK, type SheetInk } from '../../../core/setout/sheet-inks.ts';

/** Inks of sheets on white paper. */
export const SHEET_INK: Readonly<Record<SheetInk, string>> = {
  ink: '#1f2a33',
  soft: '#5c6a72',
  rule: '#c9c3b4',
  measure: '#1f5f73',
  mark: '#b3261e',
  wood: '#e2c594',
  woodLine: '#7a5a2c',
  hull: '#f5ecd8',
  board: '#fbf7ec',
  ...PADDLER_INK,
};

/** Height of a line of body type, millimetres. */
export const LINE_MM = 4.2;
