import type { Place } from '@/shared/place'

/** Where company rules and preferred values are shown. */
export const COMPANY_RULES_PLACE: Place = {
  kind: 'of the works',
  subject: { kind: 'company-rules', code: 'company-rules' },
}
