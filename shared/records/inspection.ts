import { z } from 'zod'

/** Defects in the trade's own terms. */
export const DEFECT_KINDS = [
  'non-wetting',
  'dewetting',
  'insufficient solder',
  'hole not filled',
  'excess solder',
  'bridge',
  'icicle',
  'solder ball',
  'blowhole',
  'void',
  'cold joint',
  'disturbed joint',
  'fractured joint',
  'lifted land',
] as const
export type DefectKind = (typeof DEFECT_KINDS)[number]

const millimetres = (way: string) => {
  const message = `A place ${way} lies between 0 and 2000 mm.`
  return z.number({ error: message }).min(0, message).max(2000, message).optional()
}

/** A defective joint found: what, where on the board, and who says so. */
export const defectSchema = z.strictObject({
  kind: z.enum(DEFECT_KINDS, { error: 'Defect: choose one of the listed kinds.' }),
  /** The joint: component and pin, such as "T1-3". */
  joint: z.string().trim().min(1, 'Say which joint, such as T1-3.').max(40),
  /** From the board's lower left corner, travel to the right; optional. */
  xMm: millimetres('across the board'),
  yMm: millimetres('up the board'),
  note: z.string().trim().max(300).optional(),
})
export type Defect = z.infer<typeof defectSchema>

/** One assembly looked at. */
export interface Inspection {
  readonly id: string
  readonly assembly: string
  /** 'YYYY-MM-DD' */
  readonly inspectedOn: string
  readonly inspector: string
  readonly magnification: number
  readonly jointsSeen: number
  readonly defects: readonly Defect[]
  readonly note: string
}
