/** A measuring instrument of the installation, with its newest calibration. */
export interface Instrument {
  readonly id: string
  /** The number on its label. */
  readonly tag: string
  readonly measures: string
  /** 'YYYY-MM-DD' */
  readonly calibratedOn: string
  readonly dueOn: string
  readonly certificate: string
  readonly outOfUse: boolean
}
