'use server'
import { routeCardAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { number, submit, text } from '@/app/forms/submit'

export async function openProgramme(_state: FormState, form: FormData): Promise<FormState> {
  const toInput = () => ({
    code: text(form, 'code'),
    title: text(form, 'title'),
    department: text(form, 'department'),
    productClass: text(form, 'productClass'),
    alloyFamily: text(form, 'alloyFamily'),
    serviceYears: number(form, 'serviceYears'),
    environment: text(form, 'environment'),
    annualVolume: number(form, 'annualVolume'),
  })
  return submit('open-programme', form, toInput, ({ result }) => routeCardAddress(String(result['code'])))
}
