import { countText } from '@/shared/quantity/digits-in-threes'
import { Notice } from '@/app/ui/notice'
import type { TrailOutcome } from '@/lib/trail/trail-outcome'

/** What the verification of several trails found: the broken ones by name, and those where time runs backwards. */
export function AllOutcomes({ outcomes }: { outcomes: readonly TrailOutcome[] }) {
  const broken = outcomes.filter(({ intact }) => !intact)
  const stepped = outcomes.filter(({ clockSteps }) => clockSteps > 0)
  const unhashed = outcomes.reduce((sum, { unhashedRows }) => sum + unhashedRows, 0)
  return (
    <>
      {broken.length === 0 ? (
        <Notice kind="success" announced title={`All ${outcomes.length} trails are whole`}>
          None of their entries is altered, missing or out of order, every signed gate agrees, and what the
          entries wrote stands.{' '}
          {unhashed > 0 && `${countText(unhashed)} rows were written before their content was hashed. `}
          Compare the newest hashes with copies kept outside this database.
        </Notice>
      ) : (
        <Notice kind="refusal" announced title={`${broken.length} of ${outcomes.length} trails are broken`}>
          <ul>
            {broken.map(({ code, firstBreak, breaks }) => (
              <li key={code}>
                {code}: {firstBreak}
                {breaks > 1 && ` And ${countText(breaks - 1)} more.`}
              </li>
            ))}
          </ul>
        </Notice>
      )}
      {stepped.length > 0 && (
        <Notice kind="warning" announced title="Time runs backwards in some trails">
          {stepped.map(({ code, clockSteps }) => `${code} (${countText(clockSteps)})`).join(', ')}: the
          server’s clock was set back, or entries were written with times of their own. Verify each to see
          where.
        </Notice>
      )}
    </>
  )
}
