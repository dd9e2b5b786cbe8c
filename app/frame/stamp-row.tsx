import { ResetNote } from '@/app/frame/reset-note'
import { Stamp, StampPlace } from '@/app/ui/stamp'
import type { Actor } from '@/shared/actor'
import type { Department } from '@/shared/plan/department'

/** What is shown of a signature. */
interface Signature {
  readonly personId: string
  readonly personName: string
  readonly at: string | Date
  readonly digest: string
}

interface StampRowProps {
  /** What each signature means, such as "Approved". */
  meaning: string
  /** What stands where one is still to come. */
  wanted: string
  signed: readonly {
    readonly department: Department
    readonly signature: Signature | null
    readonly holds: boolean
    /** Where it is told what the signature covered. */
    readonly coveredAt?: string | undefined
  }[]
  /** Who reads it: their own stamp, and the place of the one they may give, are marked. */
  reader?: Pick<Actor, 'personId' | 'departments'>
  /** How a signature that holds no longer is called, and why it does not. */
  lapse?: { readonly state: 'lapsed' | 'void'; readonly because?: string }
}

/** The stamps of the departments, and the places of those still to come. */
export function StampRow({ meaning, wanted, signed, reader, lapse = { state: 'lapsed' } }: StampRowProps) {
  return (
    <div className="stamp-row">
      {signed.map(({ department, signature, holds, coveredAt }) =>
        signature ? (
          <Stamp
            key={department}
            department={department}
            meaning={meaning}
            name={signature.personName}
            at={signature.at}
            digest={signature.digest}
            own={signature.personId === reader?.personId}
            note={
              <>
                <ResetNote personId={signature.personId} at={signature.at} />
                {coveredAt && (
                  <p className="stamp-because">
                    <a href={coveredAt}>What it covered, then and today</a>
                  </p>
                )}
              </>
            }
            {...(holds ? {} : lapse)}
          />
        ) : (
          <StampPlace
            key={department}
            department={department}
            wanted={wanted}
            own={reader?.departments.includes(department) ?? false}
          />
        ),
      )}
    </div>
  )
}
