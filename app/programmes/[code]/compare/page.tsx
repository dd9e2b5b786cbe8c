import { compareAddress, newProgrammeAddress, programmesAddress, routeCardAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Button } from '@/app/ui/button'
import { TextField } from '@/app/ui/field'
import { Notice } from '@/app/ui/notice'
import { readProgramme } from '@/lib/queries/programme-reader'
import { programmeDifference } from '@/shared/gate/programme-difference'
import { Differences } from './differences'

export const generateMetadata = programmeTitle(({ code }) => `Comparison, ${code}`)

/** Two programmes side by side: the values, limits, verdicts and items that differ. */
export default programmePage<object, { with?: string }>(async ({ visit, code, searchParams }) => {
  const wanted = searchParams.with?.trim().toUpperCase() ?? ''
  const read = wanted && wanted !== code ? await readProgramme(wanted, visit.person) : undefined
  const other = read?.found ? read.view : undefined
  const difference = other && programmeDifference(visit.view, other)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={compareAddress(code)}
      place={[{ text: 'Compared' }]}
      title={other ? `${code} beside ${other.code}` : 'Compare with another programme'}
      supplement="The values, limits and verdicts that differ, as both stand now"
      cells={
        difference
          ? [
              { label: 'Values', value: difference.values.length },
              { label: 'Limits', value: difference.limits.length },
              { label: 'Verdicts', value: difference.verdicts.length },
              { label: 'Compared in all', value: difference.compared },
            ]
          : [{ label: 'Compares', value: 'values, limits, verdicts' }]
      }
    >
      {(view) => (
        <>
          <form
            method="get"
            action={compareAddress(view.code)}
            className="form-row option-choose print-hidden"
            aria-label="Which programme"
          >
            <TextField name="with" label="Code of the other programme" defaultValue={wanted} required />
            <Button type="submit" kind={other ? 'quiet' : 'primary'}>
              Compare
            </Button>
          </form>
          {wanted && !other && (
            <Notice kind="warning">
              {wanted === code
                ? 'This is the programme itself; name another.'
                : `There is no programme ${wanted} that you may read.`}{' '}
              <a href={programmesAddress()}>Your programmes</a>
            </Notice>
          )}
          {other && difference && (
            <>
              <Differences one={view} other={other} difference={difference} />
              <p className="print-hidden">
                <a href={routeCardAddress(other.code)}>{other.code}</a>; or{' '}
                <a href={newProgrammeAddress(view.code)}>open a programme that starts from {view.code}</a>.
              </p>
            </>
          )}
        </>
      )}
    </ProgrammeSheet>
  )
})
