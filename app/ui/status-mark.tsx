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

/** An item's status as its box on the card, with its word. */
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

/** The box alone, for a list that says what is in it; its word is there for who does not see it. */
export const statusBox = onceFor((status: Status): ReactElement => (
  <span
    className="status-box"
    title={status}
    dangerouslySetInnerHTML={{
      __html:
        `<svg width="16" height="16" viewBox="-10 -10 20 20" aria-hidden="true" class="${statusInk(status)}">` +
        `${placed(landName(status))}</svg><span class="sr-only">${status}: </span>`,
    }}
  />
))
