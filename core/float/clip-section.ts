/** Index of each sum that a clipped half-section adds to; see `clipSection`. */
export const CLIPPED = {
  area: 0,
  momentY: 1,
  momentZ: 2,
  width: 3,
  widthY: 4,
  widthYY: 5,
  girth: 6,
} as const;
export const CLIPPED_SIZE = 7;

/**
 * Clips one half-section polygon (centreline, keel, side, sheer, deck) by the line z = level − slope·y and adds to
 * `out`: area, ∫y dA, ∫z dA of what lies below, and of the cut along the line ∫dy, ∫y dy, ∫y² dy; last the girth of
 * the wetted side. Exact for the polygon. y is the half-section's own, never negative. Metres.
 */
export function clipSection(
  y: Float64Array,
  z: Float64Array,
  cut: { level: number; slope: number },
  out: Float64Array,
): void {
  const { level, slope } = cut;
  const n = y.length;
  let area = 0;
  let momentY = 0;
  let momentZ = 0;
  let width = 0;
  let widthY = 0;
  let widthYY = 0;
  let girth = 0;
  let leftY = 0;
  let leftZ = 0;
  let out0 = false;
  let firstY = 0;
  let firstZ = 0;
  let entered = false;
  let py = 0;
  let pz = z[0]!;
  let pDepth = level - slope * py - pz;
  for (let k = 0; k <= n + 1; k++) {
    const qy = k < n ? y[k]! : 0;
    const qz = k < n ? z[k]! : k === n ? z[n - 1]! : z[0]!;
    const qDepth = level - slope * qy - qz;
    const pWet = pDepth >= 0;
    const qWet = qDepth >= 0;
    if (pWet || qWet) {
      let ay = py;
      let az = pz;
      let by = qy;
      let bz = qz;
      if (!pWet) {
        const t = pDepth / (pDepth - qDepth);
        ay = py + (qy - py) * t;
        az = pz + (qz - pz) * t;
        if (out0) {
          const cross = leftY * az - ay * leftZ;
          area += cross;
          momentY += cross * (leftY + ay);
          momentZ += cross * (leftZ + az);
          width -= ay - leftY;
          widthY -= (ay * ay - leftY * leftY) / 2;
          widthYY -= (ay ** 3 - leftY ** 3) / 3;
          out0 = false;
        } else {
          firstY = ay;
          firstZ = az;
          entered = true;
        }
      } else if (!qWet) {
        const t = pDepth / (pDepth - qDepth);
        by = py + (qy - py) * t;
        bz = pz + (qz - pz) * t;
      }
      const cross = ay * bz - by * az;
      area += cross;
      momentY += cross * (ay + by);
      momentZ += cross * (az + bz);
      if (k > 0 && k < n) girth += Math.hypot(by - ay, bz - az);
      if (k === 0) girth += by - ay;
      if (pWet && !qWet) {
        leftY = by;
        leftZ = bz;
        out0 = true;
      }
    }
    py = qy;
    pz = qz;
    pDepth = qDepth;
  }
  if (out0 && entered) {
    const cross = leftY * firstZ - firstY * leftZ;
    area += cross;
    momentY += cross * (leftY + firstY);
    momentZ += cross * (leftZ + firstZ);
    width -= firstY - leftY;
    widthY -= (firstY * firstY - leftY * leftY) / 2;
    widthYY -= (firstY ** 3 - leftY ** 3) / 3;
  }
  out[CLIPPED.area]! += area / 2;
  out[CLIPPED.momentY]! += momentY / 6;
  out[CLIPPED.momentZ]! += momentZ / 6;
  out[CLIPPED.width]! += width;
  out[CLIPPED.widthY]! += widthY;
  out[CLIPPED.widthYY]! += widthYY;
  out[CLIPPED.girth]! += girth;
}
