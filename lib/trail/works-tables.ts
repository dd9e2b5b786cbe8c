import type { WorksKind } from '@/shared/works/works-kind'

/** The table whose row is the thing itself, by kind; its id is the trail's. People and company rules have none. */
export const WORKS_TABLES: Readonly<Partial<Record<WorksKind, string>>> = {
  line: 'Line',
  machine: 'Machine',
  supplier: 'Supplier',
  part: 'Part',
}
