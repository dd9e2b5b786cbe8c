'use client'
import {
  createContext,
  useContext,
  useEffect,
  useRef,
  useState,
  type KeyboardEvent,
  type ReactNode,
} from 'react'
import { TextBox } from '@/app/forms/fields'
import { useHydrated } from '@/app/forms/hydrated'
import { SubmitButton } from '@/app/ui/submit-button'

const ASSEMBLY = 'inspections.0.assembly'

interface DefectCount {
  readonly defects: number
  readonly count: (defects: number) => void
}
const DefectCountContext = createContext<DefectCount>({ defects: 0, count: () => undefined })

/** Tells the button how many defects stand in the rows. */
export const useDefectCount = (): DefectCount => useContext(DefectCountContext)

/**
 * The keys of the bench: Enter in the assembly’s box records; Enter in a
 * defect’s box goes to the next box, so that a half-typed defect is never sent;
 * Ctrl+Enter records from anywhere.
 */
export function BenchKeys({ children }: { children: ReactNode }) {
  const [defects, count] = useState(0)
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => place.current?.querySelector<HTMLInputElement>(`[name="${ASSEMBLY}"]`)?.select(), [])
  const press = (event: KeyboardEvent<HTMLDivElement>) => {
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return
    if (event.ctrlKey || event.metaKey) {
      event.preventDefault()
      event.target.form?.requestSubmit()
    } else if (event.target.closest('.bench-defect')) {
      event.preventDefault()
      const boxes = [...(place.current?.querySelectorAll<HTMLInputElement>('.bench-defect input') ?? [])]
      boxes[boxes.indexOf(event.target) + 1]?.focus()
    }
  }
  return (
    <DefectCountContext value={{ defects, count }}>
      <div ref={place} className="form-stack" onKeyDown={press}>
        {children}
      </div>
    </DefectCountContext>
  )
}

/** The serial number, counted on from the last and selected, so that a scanner or a hand writes over it. */
export function AssemblyBox({ value }: { value: string }) {
  return (
    <TextBox
      name={ASSEMBLY}
      label="Assembly"
      hint={value ? 'Counted on from the last. Enter records it.' : 'Its serial number.'}
      defaultValue={value}
      autoComplete="off"
      autoCapitalize="characters"
      enterKeyHint="done"
      autoFocus
      required
    />
  )
}

/** Says what it will record, as far as scripts can tell. */
export function RecordButton() {
  const { defects } = useDefectCount()
  if (!useHydrated()) return <SubmitButton>Record the inspection</SubmitButton>
  return (
    <SubmitButton>
      {defects === 0
        ? 'No defect: record it'
        : `Record with ${defects} ${defects === 1 ? 'defect' : 'defects'}`}
    </SubmitButton>
  )
}
