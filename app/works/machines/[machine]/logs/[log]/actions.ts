'use server'
import { machineLogAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import { formAction, previewedAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { instantInForm } from '@/app/forms/instant-in-form'
import { findCharacteristic } from '@/shared/records/characteristics'
import { chartReset } from '@/shared/records/kinds/chart-reset'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { Refused } from '@/shared/refused'

/** The log is the one of the page. */
const { log: _log, ...OF_THE_RESET } = chartReset.columns

/** One reading typed in at the line. */
export const addReading = formAction('add-readings', {
  own: {
    readings: (form) => {
      const characteristic = findCharacteristic(text(form, 'characteristic'))
      const at = instantInForm(form, 'readings.0.at')
      if (!characteristic) throw new Refused('There is no such log.')
      return readingsFromRows([{ at, ...rowFromForm(form, 'readings.0', characteristic.columns) }])
    },
    mapping: () => null,
  },
})

/** From a day on the charts of a machine's log have limits of their own. */
export const setLimitsAgain = previewedAction('add-record', {
  own: {
    kind: () => chartReset.key,
    rows: (form) => [{ log: text(form, 'log'), ...rowFromForm(form, 'rows.0', OF_THE_RESET) }],
  },
  then: (_done, form) => `${machineLogAddress(text(form, 'works.code'), text(form, 'log'))}#resets`,
})
