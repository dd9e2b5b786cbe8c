import { findingAddress, worksLotAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import { refusal } from '@/shared/policy'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'
import { blamedBy, type Blamed, type LotPart } from '../lot-parts'
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
  const failing = parts.filter((one) => one.part.verdict === 'fails' && blamedBy(one) === 'lot')
  const amiss = BLAMES.flatMap((blamed) => {
    const own = parts.filter((one) => one.part.verdict === 'fails' && blamedBy(one) === blamed)
    return own.length > 0 ? [{ blamed, own }] : []
  })
  const open = parts.filter(({ part }) => part.verdict !== 'fails' && !PASSES[part.verdict])
  if (failing.length > 0) {
    return (
      <>
        <Notice kind="refusal" title="This lot fails and must not be soldered as it stands">
          <Reasons view={view} parts={failing} />
          <p>
            {refusal('dispose-lot', view.actor)
              ? 'Quality decides what becomes of it.'
              : 'Decide what becomes of it: '}
            {!refusal('dispose-lot', view.actor) && (
              <a href={dispositionOf(lot)}>reject it, or allow it under concession with a reason</a>
            )}
          </p>
        </Notice>
        <Amiss view={view} amiss={amiss} />
      </>
    )
  }
  if (amiss.length > 0) {
    return (
      <>
        <Amiss view={view} amiss={amiss} />
        {open.length > 0 && <NotShownYet view={view} open={open} />}
      </>
    )
  }
  if (open.length === 0) {
    return (
      <Notice kind="info" title="Nothing stands against this lot">
        <a href={dispositionOf(lot)}>Quality can dispose of it</a>
      </Notice>
    )
  }
  return <NotShownYet view={view} open={open} />
}

/** Where it is decided what becomes of the lot: at the works, or further down. */
const dispositionOf = ({ atWorks }: Lot): string =>
  `${atWorks ? worksLotAddress(atWorks.supplier, atWorks.lot) : ''}#disposition`

const NotShownYet = ({ view, open }: { view: ProgrammeView; open: readonly LotPart[] }) => (
  <Notice kind="warning" title="Not shown yet">
    <Reasons view={view} parts={open} />
  </Notice>
)

/** What has failed beside the lot itself, and so is not mended by rejecting it. */
const BLAMES = ['plan', 'test', 'age of the test', 'store'] as const satisfies readonly Blamed[]
const AMISS: Readonly<Record<(typeof BLAMES)[number], string>> = {
  plan: 'The plan it is sampled by lets too much through; the lot itself has not failed',
  test: 'A test of this lot does not count as it was made',
  'age of the test': 'It has waited too long since its test',
  store: 'It was not kept as specified',
}

function Amiss({
  view,
  amiss,
}: {
  view: ProgrammeView
  amiss: readonly { readonly blamed: (typeof BLAMES)[number]; readonly own: readonly LotPart[] }[]
}) {
  return amiss.map(({ blamed, own }) => (
    <Notice key={blamed} kind="warning" title={AMISS[blamed]}>
      <Reasons view={view} parts={own} />
    </Notice>
  ))
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
