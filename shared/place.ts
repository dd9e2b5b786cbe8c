import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import type { Stage } from '@/shared/plan/stage'
import type { WorksSubject } from '@/shared/works/works-kind'

/** Where something is shown, as data: the app makes an address of it. Most places lie within a programme. */
export type Place =
  | { readonly kind: 'route card' | 'members' | 'machines' | 'inspections' | 'cost' | 'rework' }
  | {
      readonly kind: 'action' | 'concession' | 'lesson' | 'notice' | 'study' | 'review' | 'nonconformity'
      readonly number: number
    }
  | { readonly kind: 'item'; readonly item: string; readonly part?: 'evidence' | 'approvals' | 'comments' }
  | { readonly kind: 'finding'; readonly rule: string; readonly part?: 'comments' }
  | { readonly kind: 'gate'; readonly stage: Stage }
  | { readonly kind: 'sign list'; readonly stage?: Stage }
  | { readonly kind: 'parameter'; readonly parameter: string; readonly part?: 'comments' }
  | { readonly kind: 'limit'; readonly limit: string }
  | { readonly kind: 'lot'; readonly lot: string }
  | { readonly kind: 'board'; readonly evidence: string }
  | { readonly kind: 'assembly'; readonly serial: string }
  | { readonly kind: 'log'; readonly log: string; readonly part?: 'signals' }
  | { readonly kind: 'defect chart'; readonly chart: DefectChartKey }
  | { readonly kind: 'records'; readonly recordKind: string }
  | { readonly kind: 'record'; readonly recordKind: string; readonly record: string }
  | { readonly kind: 'inspection'; readonly inspection: string }
  | { readonly kind: 'programme lines' }
  /* Outside any programme. */
  | { readonly kind: 'of the works'; readonly subject: WorksSubject }
  | { readonly kind: 'line'; readonly line: string }
  | {
      readonly kind: 'machine'
      readonly machine: string
      readonly log?: string
      readonly part?: 'signals' | 'tokens'
    }
  | { readonly kind: 'works lot'; readonly supplier: string; readonly lot: string }
  | { readonly kind: 'part'; readonly part: string; readonly section?: 'approval' | 'drawings' }
  | { readonly kind: 'instruments' | 'desk' | 'desk settings' | 'works' | 'lessons' }
  | { readonly kind: 'person'; readonly personId: string }
  /** With their history of training. */
  | { readonly kind: 'trained person'; readonly name: string }
