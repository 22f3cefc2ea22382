import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { seatFrame } from '../../core/evaluation/seat-state.ts';
import { BOAT_MARKS, boatMarks } from '../../core/photograph/boat-marks.ts';
import { axesOf, type Camera, projectPoint } from '../../core/photograph/camera.ts';
import { faceCircle } from '../../core/photograph/face-circle.ts';
import type { PhotoStudy } from '../../core/photograph/photo-study-schema.ts';
import { shownBox } from '../../core/photograph/shown-box.ts';
import { solveStance } from '../../core/posture/solve-stance.ts';

/**
 * A photograph of real persons, from the demo folder of `@vladmandic/face-api` 1.7 (MIT; its README says of these photographs that the
 * package's author took them). It is read by tests only. A pose model finds the person in the middle. Its EXIF block names a camera,
 * a day and GPS data.
 */
export const REAL_PERSON = join(
  dirname(createRequire(import.meta.url).resolve('@vladmandic/face-api/package.json')),
  'demo/sample1.jpg',
);

const JOINTS = [
  'kneelingKnee',
  'kneelingHip',
  'kneelingAnkle',
  'frontHip',
  'frontKnee',
  'frontAnkle',
  'midShoulder',
  'headTop',
  'topHand',
  'lowerHand',
] as const;

/** Marks of boat and joints in a picture, from the side, of the first athlete of a fit with the trunk at a pitch (degrees). */
export function leaningMarks(
  fit: Fit,
  image: PhotoStudy['image'],
  trunkPitchDeg: number,
): Pick<PhotoStudy, 'boat' | 'joints'> {
  const camera: Camera = {
    ...axesOf({ azimuth: Math.PI / 2, pitch: -0.05, roll: 0 }),
    position: { x: 0.2, y: -7, z: 0.9 },
    focalPx: 1.3 * image.width,
    radial: 0,
    centre: { u: image.width / 2, v: image.height / 2 },
    image,
  };
  const seat = { ...fit.seats[0]!, pins: { trunkPitchDeg } };
  const stance = solveStance({
    body: bodyOfAthlete(seat.athlete!),
    seat,
    frame: seatFrame(fit.boat, seat, 0),
  });
  const places = boatMarks(fit, 0)!;
  return {
    boat: Object.fromEntries(BOAT_MARKS.map((name) => [name, projectPoint(camera, places[name])])),
    joints: Object.fromEntries(JOINTS.map((name) => [name, projectPoint(camera, stance.points[name])])),
  };
}

/** A JPEG with an EXIF block put before all else: the picture is to be turned a quarter clockwise (orientation 6), and a maker. */
export function turnedJpeg(jpeg: Buffer): Buffer {
  const maker = Buffer.from('Secretcam\0');
  const tiff = Buffer.alloc(8 + 2 + 2 * 12 + 4 + maker.length);
  tiff.write('MM', 0);
  tiff.writeUInt16BE(42, 2);
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(2, 8);
  const entry = (at: number, [tag, type, count]: readonly [number, number, number]) => {
    tiff.writeUInt16BE(tag, at);
    tiff.writeUInt16BE(type, at + 2);
    tiff.writeUInt32BE(count, at + 4);
  };
  // Tags of TIFF 6.0, as Exif 2.32 takes them: 0x010F Make (text), 0x0112 Orientation (short).
  entry(10, [0x010f, 2, maker.length]);
  tiff.writeUInt32BE(38, 18);
  entry(22, [0x0112, 3, 1]);
  tiff.writeUInt16BE(6, 30);
  maker.copy(tiff, 38);
  const body = Buffer.concat([Buffer.from('Exif\0\0'), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}

/** A film of two seconds, drawn and recorded by the browser itself: a spot that goes across. WebM as Base64. */
export function filmOfASpot(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const canvas = document.createElement('canvas');
    canvas.width = 160;
    canvas.height = 120;
    const pen = canvas.getContext('2d')!;
    const recorder = new MediaRecorder(canvas.captureStream(30), { mimeType: 'video/webm' });
    const parts: Blob[] = [];
    recorder.ondataavailable = ({ data }) => void parts.push(data);
    recorder.start();
    for (let frame = 0; frame < 60; frame++) {
      pen.fillStyle = '#204060';
      pen.fillRect(0, 0, 160, 120);
      pen.fillStyle = '#f0c040';
      pen.fillRect(2 * frame, 50, 20, 20);
      await new Promise((done) => setTimeout(done, 33));
    }
    await new Promise((done) => {
      recorder.onstop = done;
      recorder.stop();
    });
    const bytes = new Uint8Array(await new Blob(parts).arrayBuffer());
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  });
}

/** How much neighbouring pixels differ in the middle of the head of a study's picture, in a picture that is shown of it. */
export function detailAtHead(page: Page, source: string, { joints, image }: PhotoStudy): Promise<number> {
  const face = faceCircle(joints)!;
  const box = shownBox(joints, image, face);
  return page.evaluate(
    async ([src, { centre, radius }, { left, top, width }]) => {
      const picture = new Image();
      picture.src = src;
      await picture.decode();
      const canvas = document.createElement('canvas');
      canvas.width = picture.naturalWidth;
      canvas.height = picture.naturalHeight;
      const pen = canvas.getContext('2d')!;
      pen.drawImage(picture, 0, 0);
      const shrink = picture.naturalWidth / width;
      const half = 0.6 * radius * shrink;
      const corner = [(centre.u - left) * shrink - half, (centre.v - top) * shrink - half] as const;
      const { data } = pen.getImageData(...corner, 2 * half, 2 * half);
      let sum = 0;
      for (let i = 4; i < data.length; i += 4) sum += Math.abs(data[i]! - data[i - 4]!);
      return sum / data.length;
    },
    [source, face, box] as const,
  );
}
