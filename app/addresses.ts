import { AS_OF } from '@/lib/live/as-of'
import type { ProgrammeTable } from '@/lib/exports/tables/programme-tables'
import type { Stage } from '@/shared/plan/stage'
import type { Proposal } from '@/shared/rules/proposal'
import type { WorksSubject } from '@/shared/works/works-kind'
import type { WhyAbout } from '@/shared/why/step'

/* Every address of the app, so that a link and its page cannot drift apart. */

export const deskAddress = (): string => '/'
/** Who stands in for one, the daily mail, the calendar. */
export const deskSettingsAddress = (): string => '/desk-settings'
/** Where a calendar asks for a person's due days, by its token. */
export const calendarAddress = (token: string): string => `/calendar/${token}`
/** Five pages of the demo for each role. */
export const tourAddress = (): string => '/tour'
export const signInAddress = (then?: string): string =>
  then ? `/sign-in?then=${encodeURIComponent(then)}` : '/sign-in'
export const passwordAddress = (): string => '/password'
export const programmesAddress = (): string => '/programmes'
/** Opens a programme, with what another one holds taken over where it is named. */
export const newProgrammeAddress = (from?: string): string =>
  from === undefined ? '/programmes/new' : `/programmes/new?${new URLSearchParams({ from })}`
export const instrumentsAddress = (): string => '/instruments'
/** Starts a sign-in at the identity provider; takes a POST. */
export const providerSignInAddress = (): string => '/sign-in/provider'
/** The people of the installation, as its administrator keeps them. */
export const peopleAddress = (): string => '/people'
export const personAddress = (id: string): string => `/people/${encodeURIComponent(id)}`
export const administrationAddress = (): string => '/administration'
/** What the field taught, as proposed changes to the plan of later programmes. */
export const lessonsAddress = (): string => '/lessons'
export const glossaryAddress = (): string => '/glossary'
/** One word of it, by the id of its row. */
export const termAddress = (id: string): string => `${glossaryAddress()}#${encodeURIComponent(id)}`
/** Whatever answers a query; first of the programme one is in. */
export function findAddress(query = '', inProgramme?: string): string {
  const asked = new URLSearchParams({ ...(query && { q: query }), ...(inProgramme && { in: inProgramme }) })
  return `/find${asked.size > 0 ? `?${asked}` : ''}`
}
/** The same as data, for the dialog. */
export const matchesAddress = (query: string, inProgramme: string | undefined): string =>
  `/find/matches?${new URLSearchParams({ q: query, ...(inProgramme && { in: inProgramme }) })}`
/** The trails of all programmes a person may read, searched and verified together. */
export const auditAddress = (): string => '/audit'
/** The register of instruments for a spreadsheet. */
export const instrumentsTableAddress = (): string => '/instruments/table'
/** Reads the rows of a table that was pasted or sent; takes a POST. */
export const tableRowsAddress = (): string => '/tables/rows'

/** What the works keep once for all programmes. */
export const worksAddress = (): string => '/works'
export const lineAddress = (line: string): string => `/works/lines/${encodeURIComponent(line)}`
/** One form for the day's readings of a line. */
export const lineDayAddress = (line: string): string => `${lineAddress(line)}/day`
/** For a screen at the line; it renews itself. */
export const lineWallAddress = (line: string): string => `${lineAddress(line)}/wall`
/** All programmes side by side. */
export const programmesComparedAddress = (): string => '/works/programmes'
export const machineAddress = (machine: string): string => `/works/machines/${encodeURIComponent(machine)}`
export const machineLogAddress = (machine: string, log: string): string =>
  `${machineAddress(machine)}/logs/${encodeURIComponent(log)}`
/** Something recorded of a machine’s log: an answer to a signal, a reset of its limits. */
export const machineRecordAddress = (machine: string, record: string): string =>
  `${machineAddress(machine)}/records/${record}`
/** Certificates and training of everybody. */
export const worksPeopleAddress = (): string => '/works/people'
export const trainingTableAddress = (): string => '/works/tables/training'
/** One person with their history; one of their trainings. */
export const trainedPersonAddress = (name: string, record?: string): string =>
  `${worksPeopleAddress()}/${encodeURIComponent(name)}${record === undefined ? '' : `/${record}`}`
/** Certificates of a training; the file of one. */
export const certificatesAddress = (name: string, record: string, certificate?: string): string =>
  `${trainedPersonAddress(name, record)}/certificates${certificate === undefined ? '' : `/${certificate}`}`
export const companyRulesAddress = (): string => '/works/company-rules'
export const suppliersAddress = (): string => '/works/suppliers'
export const supplierAddress = (supplier: string): string =>
  `${suppliersAddress()}/${encodeURIComponent(supplier)}`
/** The store: every lot of the works. */
export const storeAddress = (): string => '/works/lots'
export const worksLotAddress = (supplier: string, lot: string): string =>
  `${supplierAddress(supplier)}/lots/${encodeURIComponent(lot)}`
/** The parts of the works; those that a search finds. */
export const partsAddress = (): string => '/works/parts'
export const partAddress = (part: string): string => `${partsAddress()}/${encodeURIComponent(part)}`
export const newPartAddress = (): string => '/works/parts/new'
/** Describes many parts at once, from a table. */
export const manyPartsAddress = (): string => '/works/parts/many'
/** Takes a drawing of a part; takes a POST. */
export const partDrawingsAddress = (part: string): string => `${partAddress(part)}/drawings`
export const partDrawingAddress = (part: string, evidence: string): string =>
  `${partDrawingsAddress(part)}/${evidence}`

/** The page of something of the works. */
export function worksSubjectAddress({ kind, code }: WorksSubject): string {
  switch (kind) {
    case 'line':
      return lineAddress(code)
    case 'machine':
      return machineAddress(code)
    case 'supplier':
      return supplierAddress(code)
    case 'part':
      return partAddress(code)
    case 'people':
      return worksPeopleAddress()
    case 'company-rules':
      return companyRulesAddress()
  }
}
/** The trail of something of the works. */
export const worksTrailAddress = ({ kind, code }: WorksSubject): string =>
  `/works/trails/${kind}/${encodeURIComponent(code)}`

const inProgramme = (code: string, rest = ''): string => `/programmes/${encodeURIComponent(code)}${rest}`

export const routeCardAddress = (code: string): string => inProgramme(code)
/** Where the installation says whether it is up; no session is asked for. */
export const healthAddress = (): string => '/health'
/** Where an open page of a programme hears that what it was drawn as of has changed. */
export const liveAddress = (code: string, asOf: string): string =>
  `${inProgramme(code, '/live')}?${AS_OF}=${asOf}`
/** The same for a desk, and for the pages of the lines. */
export const deskLiveAddress = (mark: string): string => `/live?${AS_OF}=${mark}`
export const worksLiveAddress = (mark: string): string => `/works/live?${AS_OF}=${mark}`
export const itemAddress = (code: string, item: string): string =>
  inProgramme(code, `/items/${encodeURIComponent(item)}`)
/** The values to state first, one form after another; from one of them on. */
export const startAddress = (code: string, parameter?: string): string =>
  inProgramme(code, `/start${parameter === undefined ? '' : `#${encodeURIComponent(parameter)}`}`)
/** All margins of the programme against their limits, on one scale. */
export const marginsAddress = (code: string): string => inProgramme(code, '/margins')
/** An item with the form of one of its parameters open, a proposed value filled in if there is one. */
export function reviseAddress(code: string, item: string, parameter: string, proposal?: Proposal): string {
  const asked = new URLSearchParams({ revise: parameter })
  if (proposal) asked.set('value', String(proposal.value))
  if (proposal?.cell) asked.set('cell', `${proposal.cell.row}.${proposal.cell.column}`)
  return `${itemAddress(code, item)}?${asked}#${encodeURIComponent(parameter)}`
}
/** An archive of board files as it was read. */
export const boardAddress = (code: string, evidence: string): string =>
  inProgramme(code, `/board/${encodeURIComponent(evidence)}`)
/** An archive of board files beside an earlier one. */
export const boardComparisonAddress = (code: string, evidence: string, before: string): string =>
  `${boardAddress(code, evidence)}/against/${encodeURIComponent(before)}`
/** One layer of a board as a picture: the code of its role, `board` or `holes`; another where the files are said to be others. */
export const boardPictureAddress = (code: string, evidence: string, layer: string, asOf: number): string =>
  `${boardAddress(code, evidence)}/picture?${new URLSearchParams({ layer, 'as-of': String(asOf) })}`
/** An item with the form of a table open, filled in from an archive of board files. */
export const fromBoardAddress = (code: string, item: string, parameter: string, evidence: string): string =>
  `${itemAddress(code, item)}?${new URLSearchParams({ revise: parameter, board: evidence })}#${encodeURIComponent(parameter)}`
/** An item with the form of a value open, filled in from the parts list. */
export const fromPartsAddress = (code: string, item: string, parameter: string): string =>
  `${itemAddress(code, item)}?${new URLSearchParams({ revise: parameter, from: 'parts' })}#${encodeURIComponent(parameter)}`
export const newItemAddress = (code: string): string => inProgramme(code, '/items/new')
export const findingAddress = (code: string, rule: string): string =>
  inProgramme(code, `/findings/${encodeURIComponent(rule)}`)
export const gateAddress = (code: string, stage: Stage): string => inProgramme(code, `/gates/${stage}`)
/** Items to approve with one signature, of one stage if it is named. */
export const signListAddress = (code: string, stage?: Stage): string =>
  inProgramme(code, `/sign${stage ? `?stage=${stage}` : ''}`)
/** Several changes, answered and adopted as one. */
export const changeNoticesAddress = (code: string): string => inProgramme(code, '/changes')
export const changeNoticeAddress = (code: string, notice: number | string): string =>
  inProgramme(code, `/changes/${notice}`)
export const specificationAddress = (code: string): string => inProgramme(code, '/specification')
export const parameterAddress = (code: string, parameter: string): string =>
  inProgramme(code, `/specification/${encodeURIComponent(parameter)}`)
export const limitAddress = (code: string, limit: string): string =>
  inProgramme(code, `/limits/${encodeURIComponent(limit)}`)
export const actionsAddress = (code: string): string => inProgramme(code, '/actions')
export const actionAddress = (code: string, action: number | string): string =>
  inProgramme(code, `/actions/${action}`)
export const concessionsAddress = (code: string): string => inProgramme(code, '/concessions')
export const concessionAddress = (code: string, concession: number | string): string =>
  inProgramme(code, `/concessions/${concession}`)
/** Design reviews; one of them with its minutes. */
export const reviewsAddress = (code: string): string => inProgramme(code, '/reviews')
export const reviewAddress = (code: string, review: number | string): string =>
  inProgramme(code, `/reviews/${review}`)
/** Nonconformities; the form for one from what it was found on, "kind:key". */
export const nonconformitiesAddress = (code: string): string => inProgramme(code, '/nonconformities')
export const nonconformityAddress = (code: string, number: number | string): string =>
  inProgramme(code, `/nonconformities/${number}`)
export const newNonconformityAddress = (code: string, source?: string): string =>
  inProgramme(code, `/nonconformities/new${source ? `?${new URLSearchParams({ source })}` : ''}`)
/** Takes a picture of a nonconformity or a joint. */
export const picturesAddress = (code: string): string => inProgramme(code, '/pictures')
/** Alternatives for a choice, side by side. */
export const optionsAddress = (code: string): string => inProgramme(code, '/options')
/** A new study: of items if any are named, or with an earlier study's alternatives to begin with. */
export function newOptionAddress(code: string, items: readonly string[] = [], from?: number): string {
  // One item is named as itself; of several each has a name of its own, as its box in the form has.
  const asked = new URLSearchParams(
    items.length === 1 ? { item: items[0]! } : items.map((item) => [`item.${item}`, 'on']),
  )
  if (from !== undefined) asked.set('from', String(from))
  return inProgramme(code, `/options/new${asked.size > 0 ? `?${asked}` : ''}`)
}
export const optionAddress = (code: string, study: number | string): string =>
  inProgramme(code, `/options/${study}`)
/** The form for one more alternative of an open study, or for one that it has. */
export const alternativeAddress = (code: string, study: number, name?: string): string =>
  inProgramme(
    code,
    `/options/${study}/alternative${name === undefined ? '' : `?${new URLSearchParams({ name })}`}`,
  )
export const reliabilityAddress = (code: string): string => inProgramme(code, '/reliability')
export const costAddress = (code: string): string => inProgramme(code, '/cost')
/** This programme beside another: what differs. */
export const compareAddress = (code: string): string => inProgramme(code, '/compare')
/** What this programme taught, and the form to propose more. */
export const programmeLessonsAddress = (code: string): string => inProgramme(code, '/lessons')
export const lessonAddress = (code: string, lesson: number): string =>
  inProgramme(code, `/lessons#lesson-${lesson}`)
/** The form for a lesson: from what taught it, and for which kind of change. */
export const newLessonAddress = (
  code: string,
  about: { kind?: string; key?: string; change?: string } = {},
): string =>
  inProgramme(code, `/lessons/new${about.kind || about.change ? `?${new URLSearchParams(about)}` : ''}`)
export const lotsAddress = (code: string): string => inProgramme(code, '/lots')
export const lotAddress = (code: string, lot: string): string =>
  inProgramme(code, `/lots/${encodeURIComponent(lot)}`)
export const samplingAddress = (code: string): string => inProgramme(code, '/sampling')
/** The instruments that readings of the programme rest on; one of them with its gauge studies. */
export const gaugesAddress = (code: string): string => inProgramme(code, '/instruments')
export const gaugeAddress = (code: string, tag: string): string =>
  inProgramme(code, `/instruments/${encodeURIComponent(tag)}`)
/** Assemblies by serial number, each with the lots and records that touched it. */
export const assembliesAddress = (code: string): string => inProgramme(code, '/assemblies')
export const assemblyAddress = (code: string, serial: string): string =>
  inProgramme(code, `/assemblies/${encodeURIComponent(serial)}`)
/** What each artificial ageing stands for in the store. */
export const ageingAddress = (code: string): string => inProgramme(code, '/ageing')
export const logsAddress = (code: string): string => inProgramme(code, '/logs')
export const logAddress = (code: string, log: string): string =>
  inProgramme(code, `/logs/${encodeURIComponent(log)}`)
/** Lots by the day they must be soldered. */
export const storageAddress = (code: string): string => inProgramme(code, '/storage')
/** What inspections find, as a chart of counts. */
export const defectChartsAddress = (code: string): string => inProgramme(code, '/defect-charts')
export const inspectionsAddress = (code: string): string => inProgramme(code, '/inspections')
/** Entry one assembly after another; `again` holds what is repeated from the last. */
export const benchAddress = (code: string): string => inProgramme(code, '/inspections/bench')
export const defectGuideAddress = (code: string): string => inProgramme(code, '/inspections/guide')
export const agreementAddress = (code: string): string => inProgramme(code, '/inspections/agreement')
/** Where one inspector calls a set of joints, seeing nobody else’s calls. */
export const blindCallAddress = (code: string): string => inProgramme(code, '/inspections/agreement/call')
export const residueAddress = (code: string): string => inProgramme(code, '/inspections/residue')
export const reworkAddress = (code: string): string => inProgramme(code, '/inspections/rework')
export const inspectionAddress = (code: string, inspection: string): string =>
  inProgramme(code, `/inspections/${inspection}`)
export const recordsAddress = (code: string): string => inProgramme(code, '/records')
export const recordKindAddress = (code: string, kind: string): string =>
  inProgramme(code, `/records/${encodeURIComponent(kind)}`)
export const recordAddress = (code: string, kind: string, record: string): string =>
  inProgramme(code, `/records/${kind}/${record}`)
export const trailAddress = (code: string): string => inProgramme(code, '/trail')
/** One entry of the trail, alone. */
export const trailEntryAddress = (code: string, seq: number): string => `${trailAddress(code)}?entry=${seq}`
/** The walk back from a finding, a value, a limit or a signature to who stated what it rests on. */
export const whyAddress = (code: string, { kind, key }: WhyAbout): string =>
  inProgramme(code, `/why/${kind}/${encodeURIComponent(key)}`)
/** The whole programme as one document for paper. */
export const printAddress = (code: string): string => inProgramme(code, '/print')
/** The same on two sheets: decisions, exceptions, signatures. */
export const summaryAddress = (code: string): string => inProgramme(code, '/print/summary')
export const membersAddress = (code: string): string => inProgramme(code, '/people')
/** A stored file is served within the programme it is evidence of, where access to it is decided. */
export const fileAddress = (code: string, evidence: string): string => inProgramme(code, `/files/${evidence}`)

/** A table of a programme for a spreadsheet; `of` says which one, where there are several of its sort. */
export const tableAddress = (code: string, table: ProgrammeTable, of?: string): string =>
  inProgramme(code, `/tables/${table}${of === undefined ? '' : `?${new URLSearchParams({ of })}`}`)
