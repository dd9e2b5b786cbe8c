import { reviseAddress } from '@/app/addresses'
import { itemHolding } from '@/shared/catalogue/standard-plan'
import type { Remedy } from '@/shared/rules/finding'
import { proposalOf } from '@/shared/rules/proposal'

/** What would mend a finding, and a way to the form with the proposed value filled in. */
export function RemedyLine({ remedy, code }: { remedy: Remedy; code?: string | undefined }) {
  const proposal = proposalOf(remedy)
  const item = proposal && itemHolding.parameter(proposal.parameter)
  return (
    <span className="finding-remedy">
      <strong>Remedy:</strong> {remedy.message}
      {code && item && (
        <>
          {' '}
          <a className="finding-fill" href={reviseAddress(code, item.key, proposal.parameter, proposal)}>
            Fill this value in
          </a>
        </>
      )}
    </span>
  )
}
