/** Inks of sheets on white paper, and sizes of type in millimetres. */
export const SHEET_INK = {
  ink: '#1f2a33',
  soft: '#5c6a72',
  rule: '#c9c3b4',
  faint: '#e6e1d5',
  measure: '#1f5f73',
  mark: '#b3261e',
  wood: '#e2c594',
  hull: '#f5ecd8',
  board: '#fbf7ec',
} as const;

export const TYPE = { title: 5.4, heading: 3.9, body: 3.1, small: 2.6 } as const;

/** Height of a line of body type, millimetres. */
export const LINE_MM = 4.2;
