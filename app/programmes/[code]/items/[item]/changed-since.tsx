import { findingAddress, limitAddress, parameterAddress, partAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import { signedContentInFormOf } from '@/shared/gate/item-status'
import { signedContentDifference, type SignedContentChange } from '@/shared/gate/signed-content-difference'
import type { ItemState } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

/** For lapsed approvals: what differs between the item as signed and as it stands. Equal ones are told together. */
export function ChangedSince({ code, state }: { code: string; state: ItemState }) {
  const lapsed = state.approvals.flatMap(({ department, approval, holds }) =>
    approval && !holds ? { department, approval } : [],
  )
  const signedContents = [...new Set(lapsed.map(({ approval }) => approval.signedContent))]
  const told = signedContents.map((signedContent) => {
    const signed = lapsed.filter(({ approval }) => approval.signedContent === signedContent)
    const changes = signedContentDifference(signedContent, signedContentInFormOf(signedContent, state))
    return (
      <div key={signedContent} className="changed-since">
        <p>
          <strong>
            Changed since {signed.map(({ department }) => DEPARTMENT_NAMES[department]).join(', ')}
          </strong>{' '}
          signed on <Day at={signed[0]?.approval.at ?? ''} />:
        </p>
        <ul>
          {changes.map((change) => (
            <li key={`${change.kind} ${change.target}`}>
              <a href={placeOf(code, change)}>{change.what}</a>
              {change.how.length === 1 ? `: ${change.how[0]}` : <Differences how={change.how} />}
            </li>
          ))}
        </ul>
      </div>
    )
  })
  return told.length > 0 && <Section heading="Changed since it was approved">{told}</Section>
}

function Differences({ how }: { how: readonly string[] }) {
  const lines = how.map((line) => (
    <span key={line} className="block">
      {line}
    </span>
  ))
  return how.length > 4 ? <Disclosure summary={`${how.length} differences`}>{lines}</Disclosure> : lines
}

function placeOf(code: string, { kind, target }: SignedContentChange): string {
  if (kind === 'value') return parameterAddress(code, target)
  if (kind === 'limit') return limitAddress(code, target)
  if (kind === 'part') return partAddress(target)
  if (kind === 'finding') return findingAddress(code, target)
  return kind === 'evidence' ? '#evidence' : '#'
}
