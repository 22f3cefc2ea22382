import { useEffect, useState } from 'react';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import { type FaceCircle, faceCircle } from '../../../core/photograph/face-circle.ts';
import { type PictureBox, shownBox } from '../../../core/photograph/shown-box.ts';
import { call } from '../../client/client.ts';

/** Longest side of a picture that is shown or printed, pixels. */
const LONGEST = 1400;
const QUALITY = 0.85;
/** A face is drawn again from so many colours each way: nothing of it can be brought back. */
const FACE_COLOURS = 6;

/** A picture to be shown: JPEG as Base64, the face blurred in its own pixels; or that the face could not be blurred. */
export type BlurredPicture =
  | { readonly kind: 'picture'; readonly data: string; readonly width: number; readonly height: number }
  | { readonly kind: 'no-head' };

/**
 * A photograph as the athlete is shown it: the part with the athlete. Where the face is not to be seen its pixels are overwritten here, before anything is drawn
 * or printed. Without marks nobody knows where the face is: then there is no picture. Null where it is gone.
 */
export async function blurredPicture({ id, study }: PhotoRecord): Promise<BlurredPicture | null> {
  if (!study) return null;
  const face = study.faceSeen ? null : faceCircle(study.joints);
  if (!study.faceSeen && !face) return { kind: 'no-head' };
  const opened = await call('photos.open', { id });
  if (!opened.ok) return null;
  const picture = new Image();
  picture.src = `data:${opened.value.mime};base64,${opened.value.data}`;
  try {
    await picture.decode();
  } catch {
    return null;
  }
  const box = shownBox(study.joints, study.image, face);
  const shrink = Math.min(1, LONGEST / Math.max(box.width, box.height));
  const width = Math.max(1, Math.round(box.width * shrink));
  const height = Math.max(1, Math.round(box.height * shrink));
  const [canvas, pen] = canvasOf(width, height);
  pen.drawImage(picture, box.left, box.top, box.width, box.height, 0, 0, width, height);
  if (face) blurFace(canvas, pen, inBox(face, box, shrink));
  const data = canvas.toDataURL('image/jpeg', QUALITY).replace(/^[^,]*,/, '');
  return { kind: 'picture', data, width, height };
}

/** The same for a page; null until it is there, and while another photograph's is still the last one made. */
export function useBlurredPicture(photo: PhotoRecord): BlurredPicture | null {
  const [made, setMade] = useState<{
    readonly of: PhotoRecord;
    readonly picture: BlurredPicture | null;
  } | null>(null);
  useEffect(() => {
    let current = true;
    void blurredPicture(photo).then((picture) => {
      if (current) setMade({ of: photo, picture });
    });
    return () => {
      current = false;
    };
  }, [photo]);
  return made?.of === photo ? made.picture : null;
}

function canvasOf(width: number, height: number): [HTMLCanvasElement, CanvasRenderingContext2D] {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  return [canvas, canvas.getContext('2d')!];
}

const inBox = ({ centre, radius }: FaceCircle, { left, top }: PictureBox, by: number): FaceCircle => ({
  centre: { u: (centre.u - left) * by, v: (centre.v - top) * by },
  radius: radius * by,
});

/** Overwrites a circle with a few colours of its own square, drawn large and smooth. */
function blurFace(canvas: HTMLCanvasElement, pen: CanvasRenderingContext2D, face: FaceCircle): void {
  const { centre, radius } = face;
  const square = [centre.u - radius, centre.v - radius, 2 * radius, 2 * radius] as const;
  const [few, own] = canvasOf(FACE_COLOURS, FACE_COLOURS);
  own.imageSmoothingQuality = 'high';
  own.drawImage(canvas, ...square, 0, 0, FACE_COLOURS, FACE_COLOURS);
  pen.save();
  pen.beginPath();
  pen.arc(centre.u, centre.v, radius, 0, 2 * Math.PI);
  pen.clip();
  // Where the circle lies beyond the picture the few colours are clear: grey first, so that nothing shows through.
  pen.fillStyle = 'grey';
  pen.fill();
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(few, ...square);
  pen.restore();
}
