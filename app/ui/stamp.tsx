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
  /** Whether its reader gave it. */
  own?: boolean
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
  own = false,
  note,
}: StampProps) {
  return (
    <div className={`stamp stamp-${state} ${own ? 'stamp-own' : ''}`}>
      <div className="stamp-inner">
        <p className="stamp-head">
          <span>{DEPARTMENT_NAMES[department]}</span>
          <span>{state === 'stands' ? meaning : `${meaning}, ${state}`}</span>
        </p>
        <p className="stamp-name">
          {name}
          {own && <span className="stamp-mine"> (you)</span>}
        </p>
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
export function StampPlace({
  department,
  wanted,
  own = false,
}: {
  department: Department
  wanted: string
  /** Whether its reader signs for the department. */
  own?: boolean
}) {
  return (
    <div className={`stamp stamp-empty ${own ? 'stamp-own' : ''}`}>
      <div className="stamp-inner">
        <p className="stamp-head">
          <span>{DEPARTMENT_NAMES[department]}</span>
          {own && <span className="stamp-mine">yours to sign</span>}
        </p>
        <p className="stamp-because">{wanted}</p>
      </div>
    </div>
  )
}
