'use server'
import { rowFromForm } from '@/app/forms/column-value'
import { formAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { findCharacteristic } from '@/shared/records/characteristics'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { Refused } from '@/shared/refused'

/** One reading typed in at the line. */
export const addReading = formAction('add-readings', {
  own: {
    readings: (form) => {
      const characteristic = findCharacteristic(text(form, 'characteristic'))
      const at = Date.parse(`${text(form, 'readings.0.at')}Z`)
      if (!characteristic || Number.isNaN(at)) {
        const message = 'Say when it was read: date and time.'
        throw new Refused(message, { 'readings.0.at': message })
      }
      return readingsFromRows([{ at, ...rowFromForm(form, 'readings.0', characteristic.columns) }])
    },
    mapping: () => null,
  },
})
