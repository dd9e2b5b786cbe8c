import type { ReactNode } from 'react'

/** Labels and values in ruled pairs, as many columns as fit. */
export function Facts({ facts }: { facts: readonly { label: string; value: ReactNode }[] }) {
  return (
    <dl className="facts">
      {facts.map(({ label, value }) => (
        <div key={label} className="fact">
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
