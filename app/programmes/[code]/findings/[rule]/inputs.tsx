import type { ReactNode } from 'react'
import {
  itemAddress,
  limitAddress,
  logsAddress,
  lotsAddress,
  inspectionsAddress,
  instrumentsAddress,
  recordsAddress,
  parameterAddress,
} from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findParameter, itemHolding } from '@/shared/plan/catalogue'
import { rulingOn } from '@/shared/plan/requirement'
import { readableOf, type AnyRule, type Readable } from '@/shared/rules/rule'

/** What a rule declares to read, each with its value and where that comes from. */
export function Inputs({ view, rule }: { view: ProgrammeView; rule: AnyRule }) {
  const reads = Object.values(rule.reads).map(readableOf)
  return (
    <RuledTable
      caption="Inputs of the finding"
      captionHidden
      rows={reads}
      rowKey={({ source, key }) => `${source} ${key}`}
      columns={[
        { label: 'Input', names: true, cell: (read) => <a href={placeOf(view, read)}>{read.label}</a> },
        { label: 'As it stands', cell: (read) => valueOf(view, read) },
        { label: 'From', cell: (read) => originOf(view, read) },
      ]}
    />
  )
}

function valueOf(view: ProgrammeView, read: Readable): ReactNode {
  if (read.source === 'parameter') {
    const parameter = findParameter(read.key)
    return parameter ? (
      <ParameterValue parameter={parameter} value={view.state.facts.values.get(read.key)} />
    ) : (
      'unknown'
    )
  }
  if (read.source === 'limit')
    return (
      <>
        {read.direction}{' '}
        <Quantity value={rulingOn(read, view.state.facts.requirements).value} unit={read.unit} />
      </>
    )
  if (read.source === 'today') return view.state.facts.today
  const records = read.from(view.state.facts.records)
  return Array.isArray(records) ? `${records.length} recorded` : 'recorded'
}

function originOf(view: ProgrammeView, read: Readable): ReactNode {
  if (read.source === 'limit') {
    const { document, authority } = rulingOn(read, view.state.facts.requirements)
    return `${document} (${authority})`
  }
  if (read.source !== 'parameter')
    return read.source === 'today' ? 'the day of judging' : 'the programme’s records'
  const revision = view.state.revisions.get(read.key)
  if (!revision) return 'nobody yet'
  const evidence = view.state.evidence.filter(
    ({ itemKey }) => itemKey === itemHolding.parameter(read.key)?.key,
  )
  return (
    <>
      Revision {revision.number} by {revision.authorName}, <Day at={revision.at} />: {revision.reason}
      {evidence.length > 0 &&
        ` Evidence on its item: ${evidence.map(({ fileName, url }) => fileName ?? url).join(', ')}.`}
    </>
  )
}

function placeOf({ code }: ProgrammeView, read: Readable): string {
  if (read.source === 'parameter') return parameterAddress(code, read.key)
  if (read.source === 'limit') return limitAddress(code, read.key)
  if (read.source === 'today') return itemAddress(code, 'programme-frame')
  if (read.key === 'lots') return lotsAddress(code)
  if (read.key === 'inspections') return inspectionsAddress(code)
  if (read.key === 'instruments') return instrumentsAddress()
  return read.key.startsWith('logs') ? logsAddress(code) : recordsAddress(code)
}
