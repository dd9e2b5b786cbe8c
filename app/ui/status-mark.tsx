import type { ReactElement, ReactNode } from 'react'
import type { Status } from '@/shared/gate/item-status'
import { onceFor } from './once-for'
import { placed } from './placed-by-name'
import { landName, statusInk } from './status-shape'

type StatusMarkProps = {
  status: Status
  /** How many stand so, for a summary. */
  count?: number
  /** Its open points, or why it lapsed; follows the word. */
  because?: ReactNode
}

/** An item's standing as a land seen from above, with its word. */
export function StatusMark({ status, count, because }: StatusMarkProps) {
  if (count === undefined && !because) return statusMark(status)
  return (
    <span className="mark">
      <svg
        width="18"
        height="18"
        viewBox="-10 -10 20 20"
        aria-hidden="true"
        className={statusInk(status)}
        dangerouslySetInnerHTML={{ __html: placed(landName(status)) }}
      />
      <span>
        {count !== undefined && `${count} `}
        <span className={`mark-word ${statusInk(status)}`}>{status}</span>
        {because && <> {because}</>}
      </span>
    </span>
  )
}

/** The plain mark, for places with hundreds. */
export const statusMark = onceFor((status: Status): ReactElement => (
  <span
    className="mark"
    dangerouslySetInnerHTML={{
      __html:
        `<svg width="18" height="18" viewBox="-10 -10 20 20" aria-hidden="true" class="${statusInk(status)}">` +
        `${placed(landName(status))}</svg><span class="mark-word ${statusInk(status)}">${status}</span>`,
    }}
  />
))
