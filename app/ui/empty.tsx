import type { ReactNode } from 'react'
import { JointDrawing } from './joint-drawing'

/** A place with nothing in it yet: says so, and what would fill it. */
export function Empty({ title, children }: { title: string; children?: ReactNode }) {
  return (
    <div className="empty">
      <JointDrawing verdict="undetermined" size={56} />
      <div>
        <p className="empty-title">{title}</p>
        {children && <div className="empty-body">{children}</div>}
      </div>
    </div>
  )
}
