import type { ReactNode } from 'react'
import { LotStrip, type StripRow } from '@/app/drawing/lot-strip'
import { ButtonLink } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { Facts } from '@/app/ui/facts'
import { Section } from '@/app/ui/section'
import { readingsSummary } from '@/shared/lot-tests/readings-summary'
import { counted } from '@/shared/quantity/counted'
import { formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { dispositionInWords } from '@/shared/records/lot-identity'
import { outcomesInWords } from './outcomes-in-words'
import type { LotStrip as Strip, StripReadings } from './strips-of-lot'

/** The strips of a lot as one set of limits holds them. */
export interface HeldStrips {
  /** Whose limits they are; empty where that goes without saying. */
  readonly by: string
  readonly strips: readonly Strip[]
}

interface LotLeadProps {
  readonly lot: Lot
  readonly held: readonly HeldStrips[]
  /** The page of a lot before it; undefined where it has none. */
  readonly addressOf: (earlier: Lot) => string | undefined
  /** Where a test of it is recorded, or why this person does not. */
  readonly test: { readonly href: string } | { readonly refused: string }
  /** What can be done about it in place. */
  readonly children?: ReactNode
}

/** What leads the page of a lot: what its supplier claims, what was read here against which limit, and what was decided. */
export function LotLead({ lot, held, addressOf, test, children }: LotLeadProps) {
  const { disposition } = lot
  const outcomes = outcomesInWords(lot)
  return (
    <Section id="readings" heading="Claim, readings, limit and decision">
      <div className="lot-lead-facts">
        <Facts
          facts={[
            { label: 'Supplier’s claim', value: lot.supplierResult || 'none came with the lot' },
            ...outcomes.map(({ method, said }) => ({ label: method, value: said })),
            {
              label: 'Decision',
              value: disposition ? (
                <>
                  {dispositionInWords(lot)} by {disposition.by}, <Day at={disposition.on} />:{' '}
                  {disposition.reason}
                </>
              ) : (
                'none yet'
              ),
            },
          ]}
        />
      </div>
      {lot.tests.length === 0 && (
        <Empty title="Not tested yet">
          {'href' in test ? (
            <ButtonLink href={test.href}>Record its first test</ButtonLink>
          ) : (
            <p>{test.refused}</p>
          )}
        </Empty>
      )}
      {held.map(({ by, strips }) => (
        <div key={by}>
          {by && <h3>{by}</h3>}
          {strips.map((strip) => (
            <div key={strip.title}>
              <LotStrip
                {...strip}
                own={rowOf(strip.own, () => undefined)}
                earlier={strip.earlier.map((readings) => rowOf(readings, addressOf))}
              />
              <div className="lot-lead-facts">
                <Facts facts={factsOf(strip)} />
              </div>
            </div>
          ))}
        </div>
      ))}
      {children}
    </Section>
  )
}

function rowOf(
  { lot, counted: readings, setAside }: StripReadings,
  addressOf: LotLeadProps['addressOf'],
): StripRow {
  const address = addressOf(lot)
  const decision = lot.disposition ? dispositionInWords(lot) : 'not decided'
  const name = `Lot ${lot.code}`
  return {
    key: lot.id,
    name: `${name}, ${decision}`,
    label: (
      <>
        {address === undefined ? name : <a href={address}>{name}</a>}, <Day at={lot.receivedOn} />, {decision}
      </>
    ),
    receivedOn: lot.receivedOn,
    decision,
    counted: readings,
    setAside,
  }
}

/** What was read and what it is held to, in words beside the dots. */
function factsOf({ own, unit, limits, from, bound }: Strip) {
  const found = readingsSummary(own.counted, limits)
  const said = (value: number) => formatQuantity(value, unit)
  const limit = [
    limits.atLeast !== undefined && `at least ${said(limits.atLeast)}`,
    limits.atMost !== undefined && `at most ${said(limits.atMost)}`,
  ].filter(Boolean)
  return [
    {
      label: 'Our readings',
      value: found
        ? [
            counted(found.count, 'reading', 'readings'),
            `mean ${said(found.mean)}`,
            found.worst !== undefined && `worst ${said(found.worst)}`,
            found.worst !== undefined && `${found.outside} outside`,
          ]
            .filter(Boolean)
            .join(', ')
        : 'none that counts',
    },
    {
      label: 'Limit',
      value:
        limit.length > 0
          ? `${limit.join(', ')}${from ? ` (${from.authority}: ${from.document})` : ''}`
          : 'not specified yet',
    },
    ...(bound ? [{ label: 'Shown', value: `${bound.name}: ${said(bound.value)}` }] : []),
  ]
}
