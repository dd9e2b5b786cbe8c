import { Digest } from './digest'
import { Moment } from './date'

/** The newest entry of the trail, for the foot of a sheet: on paper it leaves the database's keeping. */
export function TrailHead({ sequence, hash, at }: { sequence: number; hash: string; at?: string | Date }) {
  return (
    <p>
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
