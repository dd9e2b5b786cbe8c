import { ageingAddress, itemAddress, lotsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { works } from '@/lib/settings/works'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import { AgeingForm } from './ageing-form'
import { AgeingsShown } from './ageings-shown'
import { ageingQuestionFrom } from './ageing-question'

export const generateMetadata = programmeTitle(({ code }) => `Ageing equivalence, ${code}`)

/** Every artificial ageing against the store: months by each published set of constants, and why steam has none. */
export default programmePage(async ({ visit, code, searchParams: given }) => {
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[
        { text: 'Lots', href: lotsAddress(code) },
        { text: 'Ageing equivalence', href: ageingAddress(code) },
      ]}
      title="Ageing equivalence"
      supplement="An hour of ageing in months of store, as far as anybody can say"
    >
      {(view) => {
        const specified = storeSpecified(view)
        const { question, problems } = ageingQuestionFrom(given, specified, works().notation.decimal)
        return (
          <>
            <p className="section-lead">
              {specified.temperatureC === undefined
                ? 'This programme does not specify its store yet: 25 °C is shown to begin with. '
                : 'Starts from the store that this programme specifies; what you change here changes nothing there. '}
              <a href={itemAddress(code, 'test-conditions')}>Test conditions and ageing as specified</a>
            </p>
            <AgeingForm code={code} given={given} specified={specified} problems={problems} />
            {question && <AgeingsShown view={view} question={question} />}
          </>
        )
      }}
    </ProgrammeSheet>
  )
})

function storeSpecified({ state: { facts } }: ProgrammeView) {
  const numberOf = (key: string) => {
    const value = facts.values.get(key)
    return typeof value === 'number' ? value : undefined
  }
  return {
    temperatureC: numberOf(storageTemperature.key),
    months: Math.max(numberOf(boardStorageMonths.key) ?? 0, numberOf(leadStorageMonths.key) ?? 0),
  }
}
