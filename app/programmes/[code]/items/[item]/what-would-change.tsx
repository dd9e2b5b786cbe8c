import { VerdictMark } from '@/app/ui/verdict-mark'
import type { Turn } from '@/shared/gate/turn'
import type { LapsedSignatures } from '@/shared/gate/lapsed-signatures'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'

interface WhatWouldChangeProps {
  turned: readonly Turn[]
  /** Findings that keep their verdict: with what they would say, when another thing is found. */
  moved: readonly Turn[]
  reach: LapsedSignatures
  revived?: readonly { item: string; department: Department }[]
}

/** What a value would do before it is saved: findings, approvals, gates. */
export function WhatWouldChange({ turned, moved, reach, revived = [] }: WhatWouldChangeProps) {
  return (
    <div className="would">
      {turned.length === 0 && (
        <p>
          No finding turns with this value
          {moved.length > 0 && `; ${moved.length} would keep ${moved.length === 1 ? 'its' : 'their'} verdict`}
          .
        </p>
      )}
      {turned.length > 0 && (
        <ul className="would-turns">
          {turned.map((entry) => (
            <TurnLine key={entry.rule} turn={entry} />
          ))}
        </ul>
      )}
      {moved.length > 0 && (
        <details className="disclosure">
          <summary>
            {moved.length === 1 ? 'The finding' : `The ${moved.length} findings`} with the same verdict
          </summary>
          <ul className="would-moved">
            {moved.map(({ rule, title, after, found }) => (
              <li key={rule}>
                <strong>{title}</strong>, still {after}: {found}
              </li>
            ))}
          </ul>
        </details>
      )}
      <Lapsed reach={reach} />
      {revived.length > 0 && (
        <p>
          Would hold again: {listed(revived.map(({ item, department }) => approvalOf(item, department)))}.
        </p>
      )}
    </div>
  )
}

function TurnLine({ turn: { title, before, after, found, remedy } }: { turn: Turn }) {
  return (
    <li>
      <span className="would-verdicts">
        <strong>{title}</strong>
        <VerdictMark verdict={before} />
        <span aria-hidden="true">→</span>
        <span className="sr-only">becomes</span>
        <VerdictMark verdict={after} />
      </span>
      <span>
        {found}
        {remedy && ` ${remedy}`}
      </span>
    </li>
  )
}

/** Signatures that saving would undo. */
function Lapsed({ reach: { approvals, gateSignatures, gates } }: { reach: LapsedSignatures }) {
  if (approvals.length === 0 && gateSignatures.length === 0)
    return <p>No signature rests on this value, so that saving it undoes none.</p>
  return (
    <dl className="would-undone">
      {approvals.length > 0 && (
        <div>
          <dt>Approvals that lapse</dt>
          <dd>
            {byItem(approvals).map(({ item, signers }) => (
              <span key={item} className="block">
                {item}: {signers.join(', ')}
              </span>
            ))}
          </dd>
        </div>
      )}
      {gates.length > 0 && (
        <div>
          <dt>Gates to be signed again</dt>
          <dd>{listed(gates.map((stage) => STAGE_NAMES[stage]))}</dd>
        </div>
      )}
      {gateSignatures.length > 0 && gates.length === 0 && (
        <div>
          <dt>Gate signatures that lapse</dt>
          <dd>
            {listed(
              gateSignatures.map(
                ({ stage, department, personName }) =>
                  `${STAGE_NAMES[stage]}, ${DEPARTMENT_NAMES[department]} (${personName})`,
              ),
            )}
          </dd>
        </div>
      )}
    </dl>
  )
}

const approvalOf = (item: string, department: Department): string =>
  `${item}, ${DEPARTMENT_NAMES[department]}`

/** One line an item, for an item's approvals mostly lapse together. */
const byItem = (approvals: LapsedSignatures['approvals']) =>
  [...new Set(approvals.map(({ item }) => item))].map((item) => ({
    item,
    signers: approvals
      .filter((entry) => entry.item === item)
      .map(({ department, personName }) => `${DEPARTMENT_NAMES[department]} (${personName})`),
  }))

const listed = (entries: readonly string[]): string => entries.join('; ')
