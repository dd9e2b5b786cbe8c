'use server'
import { rowFromForm } from '@/app/forms/column-value'
import { formAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { instantInForm } from '@/app/forms/instant-in-form'
import { findCharacteristic } from '@/shared/records/characteristics'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { Refused } from '@/shared/refused'

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
