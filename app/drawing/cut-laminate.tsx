import { hatchRectangle } from './hatch-rectangle'

interface CutLaminateProps {
  /** Of the hole. */
  axis: number
  /** Half width of what is left open in the middle. */
  open: number
  /** Where the board is broken off, from the axis to both sides. */
  reach: number
  top: number
  bottom: number
}

/** A board cut through a hole: laminate with its section lining at both sides of the axis. */
export function CutLaminate({ axis, open, reach, top, bottom }: CutLaminateProps) {
  const [edge, far] = [axis - reach, axis + reach]
  return (
    <>
      <path
        className="fill-laminate"
        d={`M${edge} ${top}H${axis - open}V${bottom}H${edge}ZM${far} ${top}H${axis + open}V${bottom}H${far}Z`}
      />
      <path
        className="line-hatch"
        d={
          hatchRectangle(edge, top, reach - open, bottom - top, 12) +
          hatchRectangle(axis + open, top, reach - open, bottom - top, 12)
        }
      />
    </>
  )
}
