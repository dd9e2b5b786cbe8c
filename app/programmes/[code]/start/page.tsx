import { routeCardAddress, startAddress } from '@/app/addresses'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { specificationFactsFor } from '@/shared/gate/live-turns'
import { refusal } from '@/shared/policy'
import { firstValuesOf, type FirstOfProgramme } from '../first-values-of'
import { FirstValue } from './first-value'

export const generateMetadata = programmeTitle(({ code }) => `First values, ${code}`)

/** Where a new programme begins: the values that most checks wait for, one form after another. */
export default programmePage(async ({ visit, code }) => {
  const values = firstValuesOf(visit.view)
  const stated = values.filter((value) => value.stated).length
  const facts = specificationFactsFor(
    values.map(({ parameter }) => parameter),
    visit.view.state.facts,
  )
  const next = values.find((value) => isMine(value))
  function isMine({ parameter, stated: isStated }: FirstOfProgramme): boolean {
    return !isStated && !refusal('revise-parameter', visit.view.actor, parameter)
  }
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={routeCardAddress(code)}
      place={[{ text: 'First values' }]}
      title="First values"
      supplement="The values that most checks wait for, in the order in which they open them"
      cells={[{ label: 'Stated', value: `${stated} of ${values.length}` }]}
    >
      {(view) => (
        <>
          {stated === values.length ? (
            <Notice kind="success" title="All of them are stated">
              <a href={routeCardAddress(code)}>The route card</a> says what is outstanding from here on.
            </Notice>
          ) : (
            <p className="section-lead">
              State each as far as it is known today; whatever is stated can be revised, with its reason. What
              is not known yet can wait: every value opens what stands beside it by itself.
            </p>
          )}
          {next && stated > 0 && (
            <p>
              <ButtonLink href={startAddress(code, next.parameter.key)}>
                Go on with: {next.parameter.label}
              </ButtonLink>
            </p>
          )}
          <ol className="first-values">
            {values.map((value, index) => (
              <FirstValue
                key={value.parameter.key}
                view={view}
                value={value}
                facts={facts}
                open={value === next}
                next={values.slice(index + 1).find(isMine)?.parameter.key ?? ''}
              />
            ))}
          </ol>
        </>
      )}
    </ProgrammeSheet>
  )
})
