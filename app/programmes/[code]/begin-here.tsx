import { startAddress } from '@/app/addresses'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { fewStated, firstValuesOf } from './first-values-of'

/** On a programme in which little is specified yet: where to begin. */
export function BeginHere({ view }: { view: ProgrammeView }) {
  const values = firstValuesOf(view)
  if (!fewStated(values)) return null
  const stated = values.filter((value) => value.stated).length
  const opened = values.reduce((sum, { opens }) => sum + opens.length, 0)
  return (
    <>
      <Notice kind="info" title={`Begin with the first values: ${stated} of ${values.length} are stated`}>
        They are the ones that most checks wait for: with them {opened} can be judged. What else is
        outstanding follows from there.
      </Notice>
      <p className="form-actions">
        <ButtonLink href={startAddress(view.code)} kind="primary">
          State the first values
        </ButtonLink>
      </p>
    </>
  )
}
