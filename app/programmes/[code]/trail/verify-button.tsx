'use client'
import { FollowedVerification } from '@/app/ui/followed-verification'
import type { StoredVerdict } from '@/shared/stored/stored-verdict'
import { Verdict } from './verdict'

interface VerifyButtonProps {
  verification: string
  withoutScripts: string
}

interface Doing {
  readonly doing: 'entries' | 'files'
  readonly done: number
  readonly of: number
}

const BEGINS: Doing = { doing: 'entries', done: 0, of: 1 }

/** Verifies the trail and says how far it is. */
export const VerifyButton = ({ verification, withoutScripts }: VerifyButtonProps) => (
  <FollowedVerification
    verification={verification}
    button="Verify the trail"
    withoutScripts={withoutScripts}
    begins={BEGINS}
    counts={({ doing }) => doing}
    otherwise="an exported bundle"
  >
    {({ verdict }: { readonly verdict: StoredVerdict }) => <Verdict verdict={verdict} />}
  </FollowedVerification>
)
