import type { Landmark } from '../../../core/photograph/joints-from-landmarks.ts';

/** Finds the landmarks of one person in a picture (pixels). Runs on this computer; nothing leaves it. */
export interface PoseModel {
  landmarksOf(picture: HTMLImageElement): Promise<readonly Landmark[]>;
}

/** Where the build puts the model's files (`renderer/vite.config.ts`). */
const FOLDER = 'pose/';
const fileUrl = (name: string) => new URL(`${FOLDER}${name}`, document.baseURI).href;

declare global {
  /** What of `@mediapipe/pose` is used: its script makes one global. */
  interface Window {
    readonly Pose: new (options: { locateFile: (name: string) => string }) => PoseSolution;
  }
}

interface PoseSolution {
  setOptions(options: { modelComplexity: 0 | 1 | 2; smoothLandmarks: boolean; selfieMode: boolean }): void;
  onResults(listener: (results: PoseResults) => void): void;
  initialize(): Promise<void>;
  send(input: { image: HTMLImageElement }): Promise<void>;
}

interface PoseResults {
  readonly poseLandmarks?: readonly { x: number; y: number; visibility?: number }[];
}

let loaded: Promise<PoseModel> | null = null;

/** The pose model, loaded at the first call (some 16 MB from this computer). Rejects where it cannot run. */
export function loadPoseModel(): Promise<PoseModel> {
  loaded ??= startModel().catch((error: unknown) => {
    loaded = null;
    throw error;
  });
  return loaded;
}

async function startModel(): Promise<PoseModel> {
  await loadScript(fileUrl('pose.js'));
  const { Pose } = window;
  const solution = new Pose({ locateFile: fileUrl });
  solution.setOptions({ modelComplexity: 1, smoothLandmarks: false, selfieMode: false });
  let last: PoseResults = {};
  solution.onResults((results) => {
    last = results;
  });
  await solution.initialize();
  return {
    async landmarksOf(picture) {
      last = {};
      await solution.send({ image: picture });
      return (last.poseLandmarks ?? []).map(({ x, y, visibility = 0 }) => ({
        u: x * picture.naturalWidth,
        v: y * picture.naturalHeight,
        visibility,
      }));
    },
  };
}

function loadScript(url: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = url;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`not loaded: ${url}`));
    document.head.append(script);
  });
}
