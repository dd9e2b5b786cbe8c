/** A toleranced length. */
export type Toleranced = { min: number; nominal: number; greatest: number }

/** A component lead: round, square, or flat with its two sides. Millimetres. */
export type Lead =
  | { form: 'round'; diameterMm: Toleranced }
  | { form: 'square'; sideMm: Toleranced }
  | { form: 'flat'; widthMm: Toleranced; thicknessMm: Toleranced }

/** What both views of a lead in its hole are drawn from. */
export type LeadAndHole = {
  /** The hole as finished, after plating. */
  holeMm: Toleranced
  lead: Lead
  landDiameterMm: number
  boardThicknessMm: number
  /** An unplated hole has a land on the solder side alone, and nothing on its wall. */
  plated?: boolean
  /** Plating on the wall of the hole, and copper of the land; drawn at least thick enough to see. */
  copperMm?: number
}

/** Where the common axis of the two views stands. */
export const AXIS = 234

/** The two sides of a lead's cross-section; equal for round and square leads. */
export function leadSides(lead: Lead): { across: Toleranced; deep: Toleranced } {
  switch (lead.form) {
    case 'round':
      return { across: lead.diameterMm, deep: lead.diameterMm }
    case 'square':
      return { across: lead.sideMm, deep: lead.sideMm }
    case 'flat':
      return { across: lead.widthMm, deep: lead.thicknessMm }
  }
}

/** "⌀0.70 ±0.05", "⌀1.00 +0.10/−0.05": a toleranced length as a drawing writes it. */
export function tolerancedText({ min, nominal, greatest }: Toleranced, sign = ''): string {
  const decimals = 2
  const up = (greatest - nominal).toFixed(decimals)
  const down = (nominal - min).toFixed(decimals)
  const value = `${sign}${nominal.toFixed(decimals)}`
  if (Number(up) === 0 && Number(down) === 0) return value
  return up === down ? `${value} ±${up}` : `${value} +${up}/−${down}`
}
