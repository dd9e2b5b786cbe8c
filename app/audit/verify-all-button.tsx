'use client'
import { FollowedVerification } from '@/app/ui/followed-verification'
import type { TrailOutcome } from '@/lib/trail/trail-outcome'
import { AllOutcomes } from './all-outcomes'

/** Verifies every trail in the list and says how far it is. */
export function VerifyAllButton({ verification, programme }: { verification: string; programme: string }) {
  return (
    <FollowedVerification
      verification={verification}
      button={programme ? 'Verify these trails' : 'Verify every trail'}
      hidden={{ programme }}
      begins={{ done: 0, of: 1 }}
      counts={() => 'trails'}
      otherwise="exported bundles"
    >
      {({ outcomes }: { readonly outcomes: readonly TrailOutcome[] }) => <AllOutcomes outcomes={outcomes} />}
    </FollowedVerification>
  )
}
