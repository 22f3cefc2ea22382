import type { FigurePoint } from '../posture/stance.ts';
import type { ImageSize, Pixel } from './camera.ts';
import type { FaceCircle } from './face-circle.ts';

/** A part of a picture, pixels. */
export interface PictureBox {
  /** From the picture's left edge. */
  readonly left: number;
  /** From the picture's upper edge. */
  readonly top: number;
  /** To the right. */
  readonly width: number;
  /** Down. */
  readonly height: number;
}

/** Room round the athlete, as a share of the longer side of the marks' box. */
const ROOM = 0.2;

/**
 * What of a picture an athlete is shown: the box round the marked joints and the face, with some room, so that bystanders stay out as
 * far as that goes. Whole pixels, within the picture; all of it where fewer than two joints are marked.
 */
export function shownBox(
  joints: Readonly<Partial<Record<FigurePoint, Pixel | undefined>>>,
  image: ImageSize,
  face: FaceCircle | null,
): PictureBox {
  const marks = Object.values(joints).filter((mark) => mark !== undefined);
  if (marks.length < 2) return { left: 0, top: 0, ...image };
  const reach = face
    ? [-face.radius, face.radius].map((by) => ({ u: face.centre.u + by, v: face.centre.v + by }))
    : [];
  const spanOf = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const;
  const [left, right] = spanOf([...marks, ...reach].map(({ u }) => u));
  const [top, bottom] = spanOf([...marks, ...reach].map(({ v }) => v));
  const room = ROOM * Math.max(right - left, bottom - top);
  const within = (from: number, to: number, size: number) => {
    const start = Math.max(0, Math.floor(from - room));
    return [start, Math.max(1, Math.min(size, Math.ceil(to + room)) - start)] as const;
  };
  const [x, width] = within(left, right, image.width);
  const [y, height] = within(top, bottom, image.height);
  return { left: x, top: y, width, height };
}
