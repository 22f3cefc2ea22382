/** A bucket that holds `capacity` requests and fills again by `perSecond`. */
export function rateLimit(
  limit: { capacity: number; perSecond: number },
  clock: () => number = performance.now.bind(performance),
): () => boolean {
  let left = limit.capacity;
  let at = clock();
  return () => {
    const time = clock();
    left = Math.min(limit.capacity, left + ((time - at) / 1000) * limit.perSecond);
    at = time;
    if (left < 1) return false;
    left -= 1;
    return true;
  };
}
