import type { ReactNode } from 'react'
import { Sign, type SignKind } from './sign'

type NoticeProps = {
  kind: SignKind
  title?: ReactNode
  /** It answers something the person just did, so a screen reader says it at once. */
  announced?: boolean
  children?: ReactNode
}

/** Something to know, to mind, that was refused, or that went well. */
export function Notice({ kind, title, announced, children }: NoticeProps) {
  const role = announced ? (kind === 'refusal' ? 'alert' : 'status') : undefined
  return (
    <div className={`notice notice-${kind}`} role={role}>
      <span className="notice-sign">
        <Sign kind={kind} />
      </span>
      <div className="notice-text">
        {title && <p className="notice-title">{title}</p>}
        {children && <div className="notice-body">{children}</div>}
      </div>
    </div>
  )
}
