/** One mark of a ruler. */
export interface RulerMark {
  /** Where it stands, pixels along the ruler. */
  readonly at: number;
  readonly labelled: boolean;
  /** Distance from zero, without sign: the ruler says at its ends which way is which. */
  readonly text: string;
}

/** Steps between labelled marks, in the shown unit, and into how many each is divided. */
const STEPS: Readonly<Record<'cm' | 'mm' | 'in', readonly (readonly [step: number, parts: number])[]>> = {
  cm: [
    [0.5, 5],
    [1, 2],
    [2, 4],
    [5, 5],
    [10, 2],
    [20, 2],
    [50, 5],
    [100, 2],
    [200, 2],
  ],
  mm: [
    [5, 5],
    [10, 2],
    [20, 4],
    [50, 5],
    [100, 2],
    [200, 2],
    [500, 5],
    [1000, 2],
    [2000, 2],
  ],
  in: [
    [0.25, 2],
    [0.5, 4],
    [1, 4],
    [2, 4],
    [6, 6],
    [12, 2],
    [24, 2],
    [48, 2],
  ],
};
const METRES = { cm: 0.01, mm: 0.001, in: 0.0254 } as const;
/** Labelled marks stand at least this far apart, pixels. */
const LEAST_GAP = 40;

/** Marks of a ruler that runs over `from` … `to` pixels and has its zero at `zero`. */
export function rulerMarks(ruler: {
  zero: number;
  pixelsPerMetre: number;
  from: number;
  to: number;
  unit: 'cm' | 'mm' | 'in';
}): RulerMark[] {
  const pixels = ruler.pixelsPerMetre * METRES[ruler.unit];
  const steps = STEPS[ruler.unit];
  const [step, parts] = steps.find(([s]) => s * pixels >= LEAST_GAP) ?? steps.at(-1)!;
  const gap = (step * pixels) / parts;
  const marks: RulerMark[] = [];
  for (let k = Math.ceil((ruler.from - ruler.zero) / gap); ruler.zero + k * gap <= ruler.to; k++) {
    const value = Math.abs((k * step) / parts);
    marks.push({
      at: ruler.zero + k * gap,
      labelled: k % parts === 0,
      text: String(Number(value.toFixed(2))),
    });
  }
  return marks;
}
