import type { ReactNode } from 'react'
import { fileAddress, itemAddress, reviseAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Quantity } from '@/app/ui/quantity'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findParameter, itemHolding } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { governingRequirement } from '@/shared/plan/requirement'
import { governingInWords } from '@/shared/plan/governing-in-words'
import { readableOf, type AnyRule, type Readable } from '@/shared/rules/rule'
import { placeOfInput } from './input-place'
import { RecordsRead } from './records-read'

/** What a rule declares to read: each with its value, who set it, on what grounds, and what shows it. */
export function Inputs({ view, rule }: { view: ProgrammeView; rule: AnyRule }) {
  const reads = Object.values(rule.reads).map((read) => ({
    read: readableOf(read),
    needed: read.source !== 'optional',
  }))
  return (
    <ol className="values">
      {reads.map(({ read, needed }) => (
        <li
          key={`${read.source} ${read.key}`}
          className={`value ${isTable(view, read) ? 'value-table' : ''}`}
        >
          <h3>
            <a href={placeOfInput(view.code, read)}>{read.label}</a>
            {!needed && <span className="field-optional"> (optional)</span>}
          </h3>
          <div className="value-now">
            <InputValue view={view} read={read} />
          </div>
          <div className="value-why">
            <Origin view={view} read={read} />
          </div>
        </li>
      ))}
    </ol>
  )
}

const isTable = ({ state }: ProgrammeView, { source, key }: Readable): boolean =>
  source === 'parameter' && Array.isArray(state.facts.values.get(key))

const ROWS_IN_SIGHT = 8

function InputValue({ view, read }: { view: ProgrammeView; read: Readable }): ReactNode {
  const { facts } = view.state
  switch (read.source) {
    case 'parameter': {
      const parameter = findParameter(read.key)
      const value = facts.values.get(read.key)
      if (!parameter) return 'unknown'
      const printed = <ParameterValue parameter={parameter} value={value} />
      return Array.isArray(value) && value.length > ROWS_IN_SIGHT ? (
        <Disclosure summary={`${value.length} rows`}>{printed}</Disclosure>
      ) : (
        printed
      )
    }
    case 'limit':
      return (
        <>
          {read.direction}{' '}
          <Quantity value={governingRequirement(read, facts.requirements).value} unit={read.unit} />
        </>
      )
    case 'today':
      return <Day at={facts.today} />
    case 'records':
      return <RecordsRead view={view} part={read.part} />
  }
}

function Origin({ view, read }: { view: ProgrammeView; read: Readable }): ReactNode {
  switch (read.source) {
    case 'parameter':
      return <ParameterOrigin view={view} parameter={read.key} />
    case 'limit':
      return governingInWords(governingRequirement(read, view.state.facts.requirements))
    case 'today':
      return 'The day of judging.'
    case 'records':
      return 'From the programme’s records; each entry stands in the trail.'
  }
}

function ParameterOrigin({ view, parameter: key }: { view: ProgrammeView; parameter: string }) {
  const revision = view.state.revisions.get(key)
  const item = itemHolding.parameter(key)
  const owner = findParameter(key)?.owner
  if (!revision)
    return (
      <>
        Nobody has specified it yet
        {item && owner && (
          <>
            ; {DEPARTMENT_NAMES[owner]} does, on{' '}
            <a href={reviseAddress(view.code, item.key, key)}>{item.title}</a>
          </>
        )}
        .
      </>
    )
  return (
    <>
      Revision {revision.number} by {revision.authorName}, <Day at={revision.at} />: {revision.reason}
      {item && <EvidenceOn view={view} item={item.key} title={item.title} />}
    </>
  )
}

/** What is attached to the item the value belongs to. */
function EvidenceOn({ view, item, title }: { view: ProgrammeView; item: string; title: string }) {
  const entries = view.state.evidence.filter(({ itemKey }) => itemKey === item)
  return (
    <span className="block">
      On <a href={itemAddress(view.code, item)}>{title}</a>
      {entries.length === 0 ? ', without evidence.' : ', with evidence: '}
      {entries.map(({ id, fileName, url }, position) => (
        <span key={id}>
          {position > 0 && ', '}
          <a href={url ?? fileAddress(view.code, id)} rel="noreferrer">
            {fileName ?? url}
          </a>
        </span>
      ))}
    </span>
  )
}
