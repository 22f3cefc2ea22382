/** Set by `?measure` in the page's address: the bench's speed is then written to the browser's own timeline. */
const measures = globalThis.location?.search.includes('measure') ?? false;
let started = 0;

/** Marks the start of a stretch of script that a pointer move costs; does nothing unless asked to measure. */
export function markStart(): void {
  if (measures) started = performance.now();
}

/** Marks its end as the measure `hand`. */
export function markEnd(): void {
  if (measures) performance.measure('hand', { start: started, end: performance.now() });
}
