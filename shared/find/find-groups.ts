/** What can be found, in the order in which equally good matches are shown. */
export const FIND_GROUPS = [
  'programme',
  'item',
  'value',
  'limit',
  'check',
  'action',
  'lot',
  'part',
  'log',
  'evidence',
  'works',
  'person',
  'term',
  'page',
] as const
export type FindGroup = (typeof FIND_GROUPS)[number]

/** As the heading over its matches says it. */
export const FIND_GROUP_NAMES: Readonly<Record<FindGroup, string>> = {
  programme: 'Programmes',
  item: 'Items',
  value: 'Values',
  limit: 'Limits',
  check: 'Checks',
  action: 'Actions',
  lot: 'Lots',
  part: 'Parts',
  log: 'Logs',
  evidence: 'Evidence and board files',
  works: 'Lines, machines, suppliers',
  person: 'People',
  term: 'Words of the glossary',
  page: 'Pages',
}
