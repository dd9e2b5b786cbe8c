import { useId } from 'react'
import { countText } from '@/shared/quantity/digits-in-threes'

type ProgressProps = {
  label: string
  /** Done so far; leave out while it is not known. */
  done?: number
  of: number
  /** What is counted, such as "readings". */
  what: string
}

/** How far a piece of work has come, as a bar and in words. */
export function Progress({ label, done, of, what }: ProgressProps) {
  const id = useId()
  return (
    <div className="progress">
      <label htmlFor={id}>{label}</label>
      <span>
        {done === undefined ? `${countText(of)} ${what}` : `${countText(done)} of ${countText(of)} ${what}`}
      </span>
      <progress id={id} value={done} max={of} />
    </div>
  )
}
