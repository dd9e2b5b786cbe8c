import * as to from '@/app/addresses'
import { deskPlaces } from '@/app/frame/desk-sheet'
import { worksPlaces } from '@/app/works/works-places'
import type { SignedIn } from '@/lib/auth/session'
import type { Findable } from '@/shared/find/findable'

interface Page {
  readonly text: string
  readonly href: string
  readonly also?: readonly string[]
}

/** The pages themselves: those around any programme, and those of the one that one is in. */
export const pageFindables = (person: SignedIn, programme: string | undefined): Findable<string>[] => [
  ...[...deskPlaces(person), ...worksOf(person), ...OWN].map((page) => findable(page, undefined)),
  ...(programme === undefined ? [] : pagesOf(programme).map((page) => findable(page, programme))),
]

const findable = ({ text, href, also = [] }: Page, programme: string | undefined): Findable<string> => ({
  group: 'page',
  label: text,
  also,
  where: href,
  ...(programme === undefined ? {} : { programme }),
})

const worksOf = (person: SignedIn): Page[] =>
  worksPlaces(person).map(({ text, href }) => ({ text: `${text} of the works`, href }))

const OWN: readonly Page[] = [
  { text: 'Password and sessions', href: to.passwordAddress() },
  { text: 'Away, daily mail, calendar', href: to.deskSettingsAddress() },
]

const pagesOf = (code: string): Page[] => [
  { text: 'Route card', href: to.routeCardAddress(code), also: ['stages', 'plan', 'overview'] },
  { text: 'Specification', href: to.specificationAddress(code), also: ['values', 'parameters'] },
  { text: 'First values', href: to.startAddress(code), also: ['start', 'begin'] },
  { text: 'Margins', href: to.marginsAddress(code), also: ['map', 'what if', 'nearest limit'] },
  { text: 'Actions', href: to.actionsAddress(code), also: ['questions'] },
  { text: 'Concessions', href: to.concessionsAddress(code), also: ['deviation permits'] },
  { text: 'Reviews', href: to.reviewsAddress(code), also: ['meetings', 'minutes'] },
  { text: 'Option studies', href: to.optionsAddress(code), also: ['alternatives'] },
  { text: 'Change notices', href: to.changeNoticesAddress(code) },
  { text: 'Lots', href: to.lotsAddress(code), also: ['deliveries'] },
  { text: 'Sampling', href: to.samplingAddress(code) },
  { text: 'Storage', href: to.storageAddress(code) },
  { text: 'Ageing', href: to.ageingAddress(code) },
  { text: 'Gauges and gauge studies', href: to.gaugesAddress(code), also: ['instruments'] },
  { text: 'Logs', href: to.logsAddress(code), also: ['readings', 'machines'] },
  { text: 'Assemblies', href: to.assembliesAddress(code), also: ['serial numbers'] },
  { text: 'Inspections', href: to.inspectionsAddress(code), also: ['defects'] },
  { text: 'Inspection bench', href: to.benchAddress(code) },
  { text: 'Guide to defects', href: to.defectGuideAddress(code) },
  { text: 'Agreement of inspectors', href: to.agreementAddress(code), also: ['kappa'] },
  { text: 'Residue', href: to.residueAddress(code), also: ['cleaning'] },
  { text: 'Rework', href: to.reworkAddress(code), also: ['repair'] },
  { text: 'Defect charts', href: to.defectChartsAddress(code) },
  { text: 'Nonconformities', href: to.nonconformitiesAddress(code) },
  { text: 'Records', href: to.recordsAddress(code) },
  { text: 'Reliability', href: to.reliabilityAddress(code) },
  { text: 'Cost', href: to.costAddress(code) },
  { text: 'Compare with another programme', href: to.compareAddress(code) },
  { text: 'Lessons of the programme', href: to.programmeLessonsAddress(code) },
  { text: 'People of the programme', href: to.membersAddress(code), also: ['members'] },
  { text: 'Trail', href: to.trailAddress(code), also: ['history', 'entries'] },
  { text: 'Print pack', href: to.printAddress(code), also: ['paper'] },
  { text: 'Summary on two sheets', href: to.summaryAddress(code) },
]
