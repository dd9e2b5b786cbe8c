'use server'
import { formAction } from '@/app/forms/form-action'

export const openNonconformity = formAction('open-nonconformity')
export const recordStep = formAction('record-step')
export const withdrawStep = formAction('withdraw-step')
