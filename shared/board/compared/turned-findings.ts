import { groupedBy } from '@/shared/grouped-by'
import type { Verdict } from '@/shared/rules/finding'
import type { BoardFinding } from '../judged/board-findings'
import { byPlace } from '../geometry/by-place'
import { isPlaced, type PlacedPart } from '../judged/placed-part'
import type { Point } from '../geometry/solid'

/** One place whose verdict is another than before; undefined where nothing was judged there. */
export interface TurnedPlace {
  readonly subject: string
  readonly before: Verdict | undefined
  readonly after: Verdict | undefined
  readonly found: string
  readonly at: Point
  readonly layer: string
}

/** One matter judged on both boards. */
export interface TurnedFinding {
  readonly key: string
  readonly title: string
  readonly before: Verdict | undefined
  readonly after: Verdict | undefined
  readonly places: readonly TurnedPlace[]
}

/** How near two places have to be to be one, mm: what is judged may have moved by less. */
const SAME_PLACE_MM = 1

/** What is judged otherwise on a later board than on the earlier one laid on it, by the same specification. */
export const turnedFindings = (
  before: readonly BoardFinding[],
  after: readonly BoardFinding[],
): TurnedFinding[] => {
  const keys = [...new Set([...after, ...before].map(({ key }) => key))]
  return keys.map((key): TurnedFinding => {
    const [was, is] = [before, after].map((findings) => findings.find((each) => each.key === key))
    return {
      key,
      title: (is ?? was)!.title,
      before: was?.finding.verdict,
      after: is?.finding.verdict,
      places: turnedPlaces(partsOf(was), partsOf(is)),
    }
  })
}

const partsOf = (judged: BoardFinding | undefined): PlacedPart[] =>
  judged?.finding.parts?.filter(isPlaced) ?? []

function turnedPlaces(before: readonly PlacedPart[], after: readonly PlacedPart[]): TurnedPlace[] {
  const left = new Set(before)
  const near = byPlace(before, ({ at }) => at, SAME_PLACE_MM)
  const pins = groupedBy(before, pinOf)
  const sameOf = (part: PlacedPart): PlacedPart | undefined => {
    const same = (other: PlacedPart): boolean => other.layer === part.layer && left.has(other)
    const pin = pinOf(part)
    return (pin === undefined ? undefined : pins.get(pin)?.find(same)) ?? near(part.at).find(same)
  }
  const changed = after.flatMap((part): TurnedPlace[] => {
    const was = sameOf(part)
    if (was) left.delete(was)
    return was?.verdict === part.verdict ? [] : [turned(part, was?.verdict, part.verdict)]
  })
  const gone = [...left].map((part) => turned(part, part.verdict, undefined))
  // What is new or gone and meets is no news for whoever decides.
  return [...changed, ...gone].filter((place) => !isQuiet(place))
}

/** The pin that a part is about, as data; of one hole with several rings by its layer too. */
const pinOf = ({ about }: PlacedPart): string | undefined => about?.['pin']

const isQuiet = ({ before, after }: TurnedPlace): boolean =>
  (before === undefined && after === 'meets') || (after === undefined && before === 'meets')

const turned = (
  { subject, found, at, layer }: PlacedPart,
  before: Verdict | undefined,
  after: Verdict | undefined,
): TurnedPlace => ({ subject, found, at, layer, before, after })
