import type { ReactNode } from 'react'
import { concessionAddress, fileAddress } from '@/app/addresses'
import { Digest } from '@/app/ui/digest'
import { Facts } from '@/app/ui/facts'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Quantity } from '@/app/ui/quantity'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { concessionName } from '@/shared/gate/concession'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import {
  type SignedContentShape,
  documentCovered,
  questionCovered,
} from '@/shared/gate/signed-content-difference'
import { findLimit, findParameter, findRule } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import type { Verdict } from '@/shared/rules/finding'

interface SignedContentProps {
  view: ProgrammeView
  signedContent: string
  digest: string
}

/** Everything a signature on the item covers, and the digest over it. */
export function SignedContent({ view, signedContent, digest }: SignedContentProps) {
  const covered = JSON.parse(signedContent) as SignedContentShape
  const { approvers, setAside, values, limits, evidence, findings } = covered
  return (
    <div className="cover">
      <p>
        SHA-256 of what follows, as canonical JSON: <Digest value={digest} full />
      </p>
      <SignedContentPart
        heading="The item"
        facts={[
          { label: 'Asks', value: questionCovered(covered) },
          {
            label: 'Approved by',
            value: approvers.map((department) => DEPARTMENT_NAMES[department as Department]).join(', '),
          },
          ...(setAside ? [{ label: 'Not applicable', value: setAside.reason }] : []),
        ]}
      />
      <SignedContentPart
        heading="Values it specifies or its rules read"
        facts={Object.entries(values).map(([key, value]) => valueFact(key, value))}
      />
      <SignedContentPart
        heading="Limits in force"
        facts={Object.entries(limits).map(([key, governing]) => limitFact(key, governing))}
      />
      <SignedContentPart
        heading="Evidence"
        facts={evidence.map((entry, position) => ({
          label: `${position + 1}. ${entry.kind}`,
          value: <EvidenceName view={view} item={covered.item} entry={entry} />,
        }))}
      />
      <SignedContentPart
        heading="Findings"
        facts={findings.map(({ rule, version, verdict, concession }) => ({
          label: findRule(rule)?.title ?? rule,
          value: (
            <>
              <VerdictMark verdict={verdict as Verdict} /> by version {version}
              {concession !== null && (
                <>
                  , with <a href={concessionAddress(view.code, concession)}>{nameOf(view, concession)}</a>
                </>
              )}
            </>
          ),
        }))}
      />
    </div>
  )
}

/** What was granted under that number; the cover holds the number alone. */
function nameOf(view: ProgrammeView, number: number): string {
  const granted = view.state.concessions.find((entry) => entry.number === number)
  return concessionName(granted ?? { number, permit: null }).toLowerCase()
}

interface Fact {
  label: string
  value: ReactNode
}

function SignedContentPart({ heading, facts }: { heading: string; facts: readonly Fact[] }) {
  if (facts.length === 0) return null
  return (
    <>
      <h3>{heading}</h3>
      <Facts facts={facts} />
    </>
  )
}

function valueFact(key: string, value: unknown): Fact {
  const parameter = findParameter(key)
  if (!parameter) return { label: key, value: JSON.stringify(value) }
  return { label: parameter.label, value: <ParameterValue parameter={parameter} value={value} /> }
}

function limitFact(key: string, covered: SignedContentShape['limits'][string]): Fact {
  const { value, authority } = covered
  const limit = findLimit(key)
  return {
    label: limit?.label ?? key,
    value: (
      <>
        {limit ? (
          <>
            {limit.direction} <Quantity value={value} unit={limit.unit} figures={6} />
          </>
        ) : (
          value
        )}
        , {documentCovered(key, covered)} ({authority})
      </>
    ),
  }
}

/** A cover names a file by its digest; where the file still is evidence here, its name leads to it. */
function EvidenceName({
  view,
  item,
  entry: { sha256, url },
}: {
  view: ProgrammeView
  item: string
  entry: SignedContentShape['evidence'][number]
}) {
  if (!sha256) return <>{url}</>
  const here = view.state.evidence.find((entry) => entry.itemKey === item && entry.sha256 === sha256)
  return (
    <>
      {here && <a href={fileAddress(view.code, here.id)}>{here.fileName}</a>}{' '}
      <Digest value={sha256} length={16} />
    </>
  )
}
