import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import type { LeadFinish } from '@/shared/plan/parameters/finishes'
import { namesComponent } from '@/shared/records/lot-identity'
import type { PlatingReadings } from './plating-readings'

/** What the specification says of plating; parts of it may still be open. */
export interface PlatingSpecification {
  readonly boardFinish: keyof typeof BOARD_FINISHES | undefined
  readonly boardFinishMinUm: number | undefined
  readonly boardFinishMaxUm: number | undefined
  readonly boardNickelUm: number | undefined
  readonly leadFinishes: readonly LeadFinish[] | undefined
  readonly holeCopper: { readonly minUm: number; readonly document: string }
}

/** The thickness a deposit must have, and who says so. */
export interface PlatingWindow {
  readonly minUm: number
  readonly maxUm: number | undefined
  readonly document: string
}

/** Why the specification has no window: it asks nothing, or has not said yet. */
export interface NoPlatingWindow {
  readonly asksNothing: boolean
  readonly message: string
}

export const hasWindow = (window: PlatingWindow | NoPlatingWindow): window is PlatingWindow =>
  'minUm' in window

/** Coats so thin, or dissolved so fast, that a certificate's word does not do: they are measured. */
const MEASURED_ON_LEADS: readonly string[] = ['silver', 'palladium']

/** The coat that has to be measured on a component's leads; undefined where its row asks for none of these. */
export function leadCoatToMeasure(
  { kind, part }: Pick<PlatingReadings['lot'], 'kind' | 'part'>,
  { leadFinishes = [] }: PlatingSpecification,
): string | undefined {
  if (kind !== 'component') return undefined
  const finish = leadFinishes.find(({ component }) => namesComponent(part, component))
  const metal = finish && LEAD_COATINGS[finish.coating].metal
  return metal && MEASURED_ON_LEADS.includes(metal) ? metal : undefined
}

/** Whether the specification gives a least thickness of any coating. */
export const asksThickness = ({
  boardFinishMinUm = 0,
  boardNickelUm = 0,
  leadFinishes = [],
}: PlatingSpecification): boolean =>
  boardFinishMinUm > 0 || boardNickelUm > 0 || leadFinishes.some(({ coatingUm }) => coatingUm > 0)

/** The window for a group of readings, or why the specification has none. */
export function platingWindow(
  { lot, deposit, place }: Pick<PlatingReadings, 'lot' | 'deposit' | 'place'>,
  specification: PlatingSpecification,
): PlatingWindow | NoPlatingWindow {
  if (lot.kind === 'component') return leadWindow(lot.part, deposit, specification.leadFinishes)
  if (deposit === 'copper') {
    const { minUm, document } = specification.holeCopper
    return place === 'hole'
      ? { minUm, maxUm: undefined, document }
      : {
          asksNothing: true,
          message: 'the specification sets no least copper on tracks: kept for information.',
        }
  }
  if (deposit === 'nickel' || deposit === 'tin-nickel') {
    return specified(specification.boardNickelUm, undefined, 'nickel under the board finish')
  }
  const { boardFinish } = specification
  if (boardFinish === undefined) return notSpecified('the board finish is not specified yet.')
  const { coating, label } = BOARD_FINISHES[boardFinish]
  if (coating !== deposit)
    return notSpecified(`${deposit} was measured, and the specified finish is ${label}.`)
  return specified(specification.boardFinishMinUm, specification.boardFinishMaxUm, 'board finish')
}

function leadWindow(
  part: string,
  deposit: string,
  finishes: readonly LeadFinish[] | undefined,
): PlatingWindow | NoPlatingWindow {
  const finish = finishes?.find(({ component }) => namesComponent(part, component))
  if (!finish) return notSpecified('the lead finishes of the specification have no row for this component.')
  if (LEAD_COATINGS[finish.coating].metal === deposit) {
    return specified(finish.coatingUm, finish.coatingMostUm, `lead coating of ${finish.component}`)
  }
  if (finish.barrier === deposit)
    return specified(finish.barrierUm, undefined, `underlayer of ${finish.component}`)
  return notSpecified(
    `${deposit} was measured, and the specified coating is ${LEAD_COATINGS[finish.coating].label}.`,
  )
}

const notSpecified = (message: string): NoPlatingWindow => ({ asksNothing: false, message })

const specified = (
  minUm: number | undefined,
  maxUm: number | undefined,
  what: string,
): PlatingWindow | NoPlatingWindow =>
  minUm === undefined
    ? notSpecified(`the specification gives no least thickness for ${what} yet.`)
    : { minUm, maxUm, document: `specification: ${what}` }
