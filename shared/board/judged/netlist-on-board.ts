import { undetermined, type Part } from '@/shared/rules/finding'
import { judgedByParts } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import type { NetlistCheck, NetlistDifference } from '../netlist/check-netlist'
import { inMm } from './in-words'
import type { PlacedPart } from './placed-part'

const LIMIT =
  'Every place of the netlist has its hole or land, and the copper joins what it joins and nothing else'

/** Holes and copper of the files against the netlist that came with them. */
export const netlistOnBoard = (check: NetlistCheck) =>
  rule({
    id: 'netlist-on-board',
    title: 'Files against their netlist',
    why: 'The netlist is what the board is tested by. Files that disagree with it are of two revisions, or one of them is wrong.',
    formula: 'places with hole or copper, sizes, plating, and pieces of copper a net',
    stage: 'specification',
    version: 1,
    reads: {},
    judge() {
      if (!check.liesOn) return undetermined(...notOn(check), LIMIT)
      return judgedByParts({
        parts: [agreed(check), ...check.differences.map(judgeDifference)],
        noun: 'statements',
        limit: LIMIT,
        working: [],
        sources: [],
        notes: [
          'Nets that are tied to each other on purpose are one piece of copper and are listed.',
          'Names as the netlist has them: some programs cut long names to their last fourteen characters.',
        ],
      })
    },
  })

const notOn = ({ met, places, shift }: NetlistCheck): [found: string, missing: string[]] => [
  `Of ${places} places ${met} have a hole or copper: the netlist does not lie on the files.${
    shift ? ` Moved by ${inMm(shift[0])} in x and ${inMm(shift[1])} in y it would.` : ''
  }`,
  ['A netlist with the same origin as the other files, of the same board'],
]

function agreed({ met, places, nets, differences }: NetlistCheck): Part {
  const apart = new Set(
    differences.flatMap((each) =>
      each.kind === 'open' ? [each.net] : each.kind === 'joined' ? each.nets : [],
    ),
  )
  return {
    subject: 'Places and nets',
    verdict: 'meets',
    found: `${met} of ${places} places have their hole or copper, and ${nets - apart.size} of ${nets} nets are joined as they should be`,
  }
}

function judgeDifference(difference: NetlistDifference): PlacedPart {
  const { at, layer } = difference
  const rank = 0
  switch (difference.kind) {
    case 'open':
      return {
        subject: difference.net,
        verdict: 'fails',
        found: `its copper is in ${difference.pieces} pieces, one of them here`,
        at,
        layer,
        rank,
      }
    case 'joined':
      return {
        subject: difference.nets.join(' and '),
        verdict: 'fails',
        found: 'they are one piece of copper',
        at,
        layer,
        rank,
      }
    case 'no hole':
    case 'no copper':
      return {
        subject: subjectOf(difference.pin, difference.net),
        verdict: 'fails',
        found: difference.kind === 'no hole' ? 'no hole is drilled there' : 'there is no copper there',
        at,
        layer,
        rank,
      }
    case 'not listed':
      return {
        subject: `Hole of ${inMm(difference.diameterMm)}`,
        verdict: 'fails',
        found: 'it is plated, and the netlist does not list it',
        at,
        layer,
        rank,
      }
    case 'size':
      return {
        subject: difference.pin || 'Hole',
        verdict: 'undetermined',
        found: `the netlist has a hole of ${inMm(difference.listedMm)}, the drill file ${inMm(difference.drilledMm)}: say which is finished and which is drilled, or send files of one revision`,
        at,
        layer,
        rank,
      }
    case 'plating':
      return {
        subject: difference.pin || 'Hole',
        verdict: 'fails',
        found: `the netlist says ${difference.listedPlated ? 'plated, the drill file unplated' : 'unplated, the drill file plated'}`,
        at,
        layer,
        rank,
      }
  }
}

const subjectOf = (pin: string, net: string | undefined): string =>
  [pin, net].filter(Boolean).join(', net ') || 'Place without a name'
