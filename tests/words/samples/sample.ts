/** A sample for the scan of texts: three that a person would read, and some that nobody would. */
export const sample = {
  label: 'Knee pad',
  says: () => 'The boat floats.',
  counts: (text: string) => `${text} is too long`,
  query: 'SELECT name FROM athletes',
  key: 'bench.undo',
};

/** A bug is told to engineers. */
export function fail(): never {
  throw new Error('no seat of that number');
}
