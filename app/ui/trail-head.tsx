import { Digest } from './digest'
import { Moment } from './date'

/**
 * The newest entry of the trail, for the foot of a sheet. Paper shows the
 * whole hash: there it leaves the database's keeping.
 */
export function TrailHead({ sequence, hash, at }: { sequence: number; hash: string; at?: string | Date }) {
  return (
    <p className="trail-head">
      Trail entry {sequence} <Digest value={hash} length={16} />
      {at && (
        <>
          {' '}
          of <Moment at={at} />
        </>
      )}
    </p>
  )
}
