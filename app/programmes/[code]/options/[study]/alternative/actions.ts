'use server'
import { alternativeFromForm } from '@/app/programmes/[code]/options/new/alternatives-from-form'
import { formAction } from '@/app/forms/form-action'

const own = { alternative: (form: FormData) => alternativeFromForm(form, 'alternative') }

export const addAlternative = formAction('add-alternative', { own })
export const changeAlternative = formAction('change-alternative', { own })
