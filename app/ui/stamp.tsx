import type { ReactNode } from 'react'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { Day } from './date'
import { Digest } from './digest'

type StampProps = {
  department: Department
  /** What the signature means, such as "Approved", "Gate signed", "Concession granted". */
  meaning: string
  name: string
  at: string | Date
  /** The digest the signature covers, in hexadecimal. */
  digest: string
  /** `lapsed` when what it covered has changed, `void` when it was withdrawn. */
  state?: 'stands' | 'lapsed' | 'void'
  /** Why it no longer stands. */
  because?: ReactNode
  /** What else has to be known of who signed. */
  note?: ReactNode
}

/** A signature as the rubber stamp of a department. */
export function Stamp({
  department,
  meaning,
  name,
  at,
  digest,
  state = 'stands',
  because,
  note,
}: StampProps) {
  return (
    <div className={`stamp stamp-${state}`}>
      <div className="stamp-inner">
        <p className="stamp-head">
          <span>{DEPARTMENT_NAMES[department]}</span>
          <span>{state === 'stands' ? meaning : `${meaning}, ${state}`}</span>
        </p>
        <p className="stamp-name">{name}</p>
        <p className="stamp-foot">
          <Day at={at} />
          <Digest value={digest} />
        </p>
        {because && <p className="stamp-because">{because}</p>}
        {note}
      </div>
    </div>
  )
}

/** Where a department's stamp is still to come. */
export function StampPlace({ department, wanted }: { department: Department; wanted: string }) {
  return (
    <div className="stamp stamp-empty">
      <div className="stamp-inner">
        <p className="stamp-head">
          <span>{DEPARTMENT_NAMES[department]}</span>
        </p>
        <p className="stamp-because">{wanted}</p>
      </div>
    </div>
  )
}
