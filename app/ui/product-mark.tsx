/**
 * The product's mark: the liquidus lines of a two-metal alloy falling to the
 * eutectic point, over the solidus.
 */
export function ProductMark({ size = 26 }: { size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 26 26" aria-hidden="true" className="ink-copper">
      <path d="M2 24V2M24 24V2M2 24H24" fill="none" stroke="var(--color-ink)" strokeWidth="1.5" />
      <path
        d="M2 4.5C8 7.5 13 12 16.5 18.5C18.5 15 21 12.5 24 11"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.5"
      />
      <path d="M2 18.5H24" fill="none" stroke="var(--color-ink)" strokeWidth="1.5" strokeDasharray="3 2" />
    </svg>
  )
}
