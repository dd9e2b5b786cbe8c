/** How the digits of a drill file's coordinates are read. */
export interface DrillReading {
  readonly unit: 'mm' | 'inch'
  readonly integerDigits: number
  readonly decimals: number
  /** Which zeros are kept: where leading ones are, digits are counted from the left. */
  readonly kept: 'leading' | 'trailing'
}

/** One hole, or slot from `a` to `b`; lengths in mm. */
export interface Drilled {
  readonly a: readonly [x: number, y: number]
  readonly b: readonly [x: number, y: number]
  readonly diameterMm: number
  readonly tool: string
  /** Undefined where the file does not say. */
  readonly plated: boolean | undefined
  /** `ComponentDrill`, `ViaDrill` and the like, where the file says. */
  readonly use?: string
}

export interface DrillFile {
  readonly holes: readonly Drilled[]
  readonly reading: DrillReading
  /** What of the reading the file does not say and was taken for granted. */
  readonly assumed: readonly ('unit' | 'digits' | 'zeros')[]
  /** Whether every coordinate has its own decimal point, so that digits need not be counted. */
  readonly decimalPoints: boolean
  /** `FileFunction` and the like, by name. */
  readonly attributes: ReadonlyMap<string, readonly string[]>
}
