import { Notice } from '@/app/ui/notice'
import type { TrailOutcome } from '@/lib/trail/verify-all'

/** What the verification of several trails found: the broken ones by name. */
export function AllOutcomes({ outcomes }: { outcomes: readonly TrailOutcome[] }) {
  const broken = outcomes.filter(({ intact }) => !intact)
  if (broken.length === 0) {
    return (
      <Notice kind="success" announced title={`All ${outcomes.length} trails are whole`}>
        None of their entries is altered, missing or out of order, and every signed gate agrees. Compare the
        newest hashes with copies kept outside this database.
      </Notice>
    )
  }
  return (
    <Notice kind="refusal" announced title={`${broken.length} of ${outcomes.length} trails are broken`}>
      <ul>
        {broken.map(({ code, sentence }) => (
          <li key={code}>
            {code}: {sentence}
          </li>
        ))}
      </ul>
    </Notice>
  )
}
