import type { ReactNode } from 'react'
import { jointMarkup } from './joint-drawing'

/** A place with nothing in it yet: says so, and what would fill it. */
export function Empty({ title, children }: { title: string; children?: ReactNode }) {
  return (
    <div className="empty">
      <span className="empty-joint" dangerouslySetInnerHTML={{ __html: jointMarkup('undetermined', 56) }} />
      <div>
        <p className="empty-title">{title}</p>
        {children && <div className="empty-body">{children}</div>}
      </div>
    </div>
  )
}
