import { Disclosure } from './disclosure'

/**
 * Safety: what of the work can hurt, and what to do. Placed once a page, with every caution that
 * the page's matters have; each is said once, folded behind their number, and stands open on paper.
 */
export function Cautions({ of }: { of: readonly string[] }) {
  const distinct = [...new Set(of)]
  if (distinct.length === 0) return null
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
        <Disclosure summary={<span className="notice-title">Safety ({distinct.length})</span>}>
          <ul className="notice-body">
            {distinct.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </Disclosure>
      </div>
    </div>
  )
}
