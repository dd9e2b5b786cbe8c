import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import { lineAddress, lineDayAddress, worksAddress } from '@/app/addresses'
import { addressPart } from '@/app/address-part'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Cautions } from '@/app/ui/cautions'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { SubmitButton } from '@/app/ui/submit-button'
import { readLineStates, type LogState } from '@/lib/queries/works/line-states'
import { works } from '@/lib/settings/works'
import { refusal } from '@/shared/policy'
import { wallTimeOf } from '@/shared/quantity/works-clock'
import { findCharacteristic } from '@/shared/records/characteristics'
import { Narrowest, Newest } from '../../../log-table'
import { visitWorks } from '../../../visit-works'
import { WorksSheet } from '../../../works-sheet'
import { enterDay } from './actions'
import { blockName } from './day-blocks'

interface DayPageProps {
  readonly params: Promise<{ line: string }>
}

const ROUND_CAUTION =
  'Solder baths, irons and preheaters burn, and fume and flux vapour harm: read them with the guards closed and the extraction running, as your local rules say.'

export const generateMetadata = async ({ params }: DayPageProps) => ({
  title: `Readings of ${addressPart((await params).line)} – Liquidus`,
})

/** All readings of a line's round in one form, the last values and the narrowest window beside each. */
export default async function DayPage({ params }: DayPageProps) {
  const code = addressPart((await params).line)
  const { person, actor } = await visitWorks(lineDayAddress(code))
  const [line] = await readLineStates(code)
  if (!line) notFound()
  const may = refusal('add-readings', actor)
  const logs = line.machineStates
    .filter(({ closedAt }) => closedAt === null)
    .flatMap(({ states }) => states)
    .filter(({ characteristic }) => !findCharacteristic(characteristic)?.comesWhole)
  const { timeZone } = works()
  return (
    <WorksSheet
      person={person}
      at={worksAddress()}
      title={`Readings of ${line.code}`}
      supplement="One round in one form; what was not read stays empty"
      place={[{ text: line.code, href: lineAddress(line.code) }, { text: 'Readings' }]}
    >
      {may && <Notice kind="info">{may}</Notice>}
      {!may && logs.length === 0 && (
        <Empty title="Nothing is logged here yet">Open a machine on this line, and a log of it.</Empty>
      )}
      {!may && logs.length > 0 && (
        <>
          <Cautions of={[ROUND_CAUTION]} />
          <CommandForm
            action={enterDay}
            formKey={randomUUID()}
            hidden={{ line: line.code }}
            label={`Readings of ${line.code}`}
          >
            <div className="form-narrow">
              <TextBox
                name="at"
                type="datetime-local"
                label={`Read at, ${timeZone}`}
                defaultValue={wallTimeOf(new Date().getTime(), timeZone).slice(0, 16)}
                required
              />
            </div>
            {logs.map((log, index) => (
              <LogBlock key={log.id} log={log} block={String(index)} />
            ))}
            <SubmitButton>Store these readings</SubmitButton>
          </CommandForm>
        </>
      )}
    </WorksSheet>
  )
}

function LogBlock({ log, block }: { log: LogState; block: string }) {
  const { machine, name, characteristic: key } = log
  const characteristic = findCharacteristic(key)
  if (!characteristic) return null
  return (
    <fieldset className="day-block">
      <legend>
        {name}: {characteristic.label} of {machine}
      </legend>
      <p className="day-last">
        Last: <Newest log={log} />. Window: <Narrowest log={log} />.
      </p>
      <input type="hidden" name={blockName(block, 'machine')} value={machine} />
      <input type="hidden" name={blockName(block, 'log')} value={name} />
      <input type="hidden" name={blockName(block, 'characteristic')} value={key} />
      <div className="form-row">
        {Object.entries(characteristic.columns).map(([column, declared]) => (
          <ColumnField
            key={column}
            name={`${blockName(block, 'reading')}.${column}`}
            column={{ ...declared, optional: true }}
          />
        ))}
      </div>
    </fieldset>
  )
}
