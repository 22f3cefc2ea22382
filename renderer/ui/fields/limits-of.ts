/** The least and greatest value that a number's schema allows, for an entry of it. */
export function limitsOf(schema: { minValue: number | null; maxValue: number | null }): {
  min: number;
  max: number;
} {
  return {
    min: schema.minValue ?? Number.NEGATIVE_INFINITY,
    max: schema.maxValue ?? Number.POSITIVE_INFINITY,
  };
}
