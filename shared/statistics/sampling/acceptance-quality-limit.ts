/**
 * The columns of the sampling tables. Percent nonconforming up to 10; above 10 they only mean
 * nonconformities per hundred units. Kept as printed, since they are names of columns before numbers.
 *
 * Source: MIL-STD-105E (10 May 1989), table II-A (read in transcriptions).
 */
export const ACCEPTANCE_QUALITY_LIMITS = [
  ...(['0.010', '0.015', '0.025', '0.040', '0.065', '0.10', '0.15', '0.25', '0.40', '0.65'] as const),
  ...(['1.0', '1.5', '2.5', '4.0', '6.5', '10', '15', '25', '40', '65'] as const),
  ...(['100', '150', '250', '400', '650', '1000'] as const),
] as const
export type AcceptanceQualityLimit = (typeof ACCEPTANCE_QUALITY_LIMITS)[number]

/** The limit as a fraction defective. Errors: RangeError above 10, where the limit is no percentage. */
export function asFraction(limit: AcceptanceQualityLimit): number {
  const percent = Number(limit)
  if (percent > 10) throw new RangeError(`An AQL of ${limit} counts defects per hundred units, not percent.`)
  return percent / 100
}
