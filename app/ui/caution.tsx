import type { ReactNode } from 'react'

/** Safety: what of the work can hurt, and what to do. Its triangle is drawn, its word written. */
export function Caution({ hazard, children }: { hazard?: string; children: ReactNode }) {
  return (
    <div className="caution" role="note">
      <span className="notice-sign">
        <svg width="32" height="29" viewBox="0 0 32 29" aria-hidden="true">
          <path
            d="M16 2L30 27H2Z"
            fill="var(--color-rosin-wash)"
            stroke="currentColor"
            strokeWidth="3"
            strokeLinejoin="round"
          />
          <path d="M14.3 10H17.7L17 19H15Z" fill="currentColor" />
          <circle cx="16" cy="22.4" r="1.8" fill="currentColor" />
        </svg>
      </span>
      <div className="notice-text">
        <p className="notice-title">{hazard ? `Safety: ${hazard}` : 'Safety'}</p>
        <div className="notice-body">{children}</div>
      </div>
    </div>
  )
}
