import { findingAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import { refusal } from '@/shared/policy'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'
import type { LotPart } from '../lot-parts'
import { PASSES } from '@/shared/rules/finding'

/** Before all the tables: why the lot cannot be used as it stands, and what to do about it. */
export function WhatStands({
  view,
  lot,
  parts,
}: {
  view: ProgrammeView
  lot: Lot
  parts: readonly LotPart[]
}) {
  if (lot.disposition) return null
  const failing = parts.filter(({ part }) => part.verdict === 'fails')
  const open = parts.filter(({ part }) => part.verdict !== 'fails' && !PASSES[part.verdict])
  if (failing.length > 0) {
    return (
      <Notice kind="refusal" title="This lot fails and must not be soldered as it stands">
        <Reasons view={view} parts={failing} />
        <p>
          {refusal('dispose-lot', view.actor)
            ? 'Quality decides what becomes of it.'
            : 'Decide what becomes of it: '}
          {!refusal('dispose-lot', view.actor) && (
            <a href="#disposition">reject it, or allow it under concession with a reason</a>
          )}
        </p>
      </Notice>
    )
  }
  if (open.length === 0) {
    return (
      <Notice kind="info" title="Nothing stands against this lot">
        <a href="#disposition">Quality can dispose of it</a>
      </Notice>
    )
  }
  return (
    <Notice kind="warning" title="Not shown yet">
      <Reasons view={view} parts={open} />
    </Notice>
  )
}

function Reasons({ view, parts }: { view: ProgrammeView; parts: readonly LotPart[] }) {
  return (
    <ul className="what-rests">
      {parts.map(({ rule, title, part }, at) => (
        <li key={`${rule} ${at}`}>
          <a href={findingAddress(view.code, rule)}>{title}</a>: {part.found} {part.remedy?.message}
        </li>
      ))}
    </ul>
  )
}
