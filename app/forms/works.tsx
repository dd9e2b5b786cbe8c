'use client'
import { createContext, useContext, type ReactNode } from 'react'
import { WORKS_FIELDS } from '@/app/forms/works-in-form'
import { NEUTRAL_WORKS, type Works } from '@/shared/quantity/works'

const WorksContext = createContext<Works>(NEUTRAL_WORKS)

/** How time, numbers and dates are told at the works, for boxes that show and read them. */
export const useWorks = (): Works => useContext(WorksContext)

/** Hands the works' ways to all boxes within. */
export const WorksProvider = ({ works, children }: { works: Works; children: ReactNode }) => (
  <WorksContext value={works}>{children}</WorksContext>
)

/** Says once on a page by which clock its times are told. */
export const ZoneNamed = () => <p>Times by the clock of {useWorks().timeZone}</p>

/** With every form goes how its boxes are filled in, so that they are read as they were shown. */
export function WorksFields() {
  const { timeZone, notation } = useWorks()
  return (
    <>
      <input type="hidden" name={WORKS_FIELDS.timeZone} value={timeZone} />
      <input type="hidden" name={WORKS_FIELDS.decimal} value={notation.decimal} />
      <input type="hidden" name={WORKS_FIELDS.dates} value={notation.dates} />
    </>
  )
}
