import type { Source } from '@/shared/sources/source'

/**
 * A published way to a reliability figure. Such models differ by orders of
 * magnitude for one and the same board, so no figure goes without its model.
 */
export interface ReliabilityModel {
  readonly name: string
  /** Edition, revision or constants used; two editions are two models. */
  readonly edition: string
  readonly source: Source
  /** What the model was made for, and where it should not be believed. */
  readonly caution: string
}

/** A constant failure rate in FIT (failures per 10⁹ hours), with the model it comes from. */
export interface FailureRate {
  readonly fit: number
  readonly model: ReliabilityModel
}

/** As printed beside every figure. */
export const modelLabel = ({ name, edition }: ReliabilityModel): string => `${name}, ${edition}`
