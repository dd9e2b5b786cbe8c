import type { ReactNode } from 'react'

/** The ways to take a table along for a spreadsheet; `address` is that of its route. */
export function TakeTable({ address, what }: { address: string; what: ReactNode }) {
  const as = (form: string) => `${address}${address.includes('?') ? '&' : '?'}as=${form}`
  return (
    <p className="take-table print-hidden">
      {what}:{' '}
      <a href={as('csv')} download>
        CSV<span className="sr-only"> of {what}</span>
      </a>{' '}
      ·{' '}
      <a href={as('xlsx')} download>
        XLSX<span className="sr-only"> of {what}</span>
      </a>
    </p>
  )
}
