import { createRequire } from 'node:module';

/** The few calls of OpenCV (Apache-2.0) that the camera is held against. Matrices hold numbers of 64 bits. */
export interface OpenCv {
  readonly CV_64F: number;
  readonly SOLVEPNP_ITERATIVE: number;
  readonly Mat: new () => Matrix;
  onRuntimeInitialized?: () => void;
  matFromArray(rows: number, columns: number, type: number, values: readonly number[]): Matrix;
  solvePnP(...input: readonly (Matrix | boolean | number)[]): boolean;
  Rodrigues(from: Matrix, into: Matrix): void;
}

export interface Matrix {
  readonly data64F: Float64Array;
}

/** OpenCV, once its WebAssembly has been made ready. */
export function openCv(): Promise<OpenCv> {
  const cv = createRequire(import.meta.url)('@techstark/opencv-js') as OpenCv;
  // Resolved with a box: the module has a `then` of its own that would be followed for ever.
  return new Promise<{ cv: OpenCv }>((resolve) => {
    if (cv.Mat) resolve({ cv });
    else cv.onRuntimeInitialized = () => resolve({ cv });
  }).then((box) => ({ ...pick(box.cv) }));
}

function pick(cv: OpenCv): OpenCv {
  return {
    CV_64F: cv.CV_64F,
    SOLVEPNP_ITERATIVE: cv.SOLVEPNP_ITERATIVE,
    Mat: cv.Mat,
    matFromArray: (...a) => cv.matFromArray(...a),
    solvePnP: (...a) => cv.solvePnP(...a),
    Rodrigues: (a, b) => cv.Rodrigues(a, b),
  };
}
