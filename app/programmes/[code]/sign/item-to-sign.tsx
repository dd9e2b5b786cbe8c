import { itemAddress } from '@/app/addresses'
import { verdictMark } from '@/app/ui/verdict-mark'
import { Disclosure } from '@/app/ui/disclosure'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ToSign } from '@/shared/gate/sign-list'
import type { SignedContentShape } from '@/shared/gate/signed-content-difference'
import { VERDICTS } from '@/shared/rules/finding'
import { ChangedSince } from '../items/[item]/changed-since'
import { SignedContent } from '../items/[item]/signed-content'
import { ReadTick } from './read-tick'

/** One item of the list: its tick, what a signature would cover, and what changed since the last one. */
export function ItemToSign({ view, entry }: { view: ProgrammeView; entry: ToSign }) {
  const { item: state, confirms, again } = entry
  const { key, title } = state.item.definition
  const covered = JSON.parse(state.signedContent) as SignedContentShape
  return (
    <li className="sign-item">
      <ReadTick item={key} title={title} digest={state.digest} confirms={confirms !== undefined} />
      <p className="sign-item-covers">
        <span className="mark-row">{verdictsOf(covered)}</span>
        <span>
          {[
            counted(Object.keys(covered.values).length, 'value'),
            counted(Object.keys(covered.limits).length, 'limit'),
            covered.evidence.length === 0
              ? 'no evidence'
              : counted(covered.evidence.length, 'piece', 'pieces') + ' of evidence',
          ].join(', ')}
          {' · '}
          <a href={itemAddress(view.code, key)}>open the item</a>
        </span>
      </p>
      {again && <p className="field-hint">To be approved again. {again}</p>}
      {confirms && <p className="field-hint">Same verdicts, limits and evidence; no margin is worse.</p>}
      <ChangedSince code={view.code} state={state} />
      <Disclosure summary={`What it covers, digest ${state.digest.slice(0, 12)}`}>
        <SignedContent view={view} signedContent={state.signedContent} digest={state.digest} />
      </Disclosure>
    </li>
  )
}

/** The findings it covers by verdict, worst first. */
const verdictsOf = ({ findings }: SignedContentShape) =>
  [...VERDICTS]
    .reverse()
    .map((verdict) => ({ verdict, count: findings.filter((one) => one.verdict === verdict).length }))
    .filter(({ count }) => count > 0)
    .map(({ verdict, count }) => (
      <span key={verdict}>
        {count > 1 && <span className="mark-count">{count}</span>}
        {verdictMark(verdict)}
      </span>
    ))

const counted = (count: number, one: string, several = `${one}s`): string =>
  `${count} ${count === 1 ? one : several}`
