import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import type { Stage } from '@/shared/plan/stage'

/** Where something is shown, as data: the app makes an address of it. Most places lie within a programme. */
export type Place =
  | { readonly kind: 'route card' | 'members' | 'machines' | 'inspections' }
  | { readonly kind: 'action' | 'concession' | 'lesson' | 'study'; readonly number: number }
  | { readonly kind: 'item'; readonly item: string; readonly part?: 'evidence' | 'approvals' }
  | { readonly kind: 'gate'; readonly stage: Stage }
  | { readonly kind: 'parameter'; readonly parameter: string }
  | { readonly kind: 'limit'; readonly limit: string }
  | { readonly kind: 'finding'; readonly rule: string }
  | { readonly kind: 'lot'; readonly lot: string }
  | { readonly kind: 'assembly'; readonly serial: string }
  | { readonly kind: 'log'; readonly log: string; readonly part?: 'signals' }
  | { readonly kind: 'defect chart'; readonly chart: DefectChartKey }
  | { readonly kind: 'records'; readonly recordKind: string }
  /* Outside any programme. */
  | { readonly kind: 'instruments' | 'desk' | 'desk settings' }
  | { readonly kind: 'person'; readonly personId: string }
