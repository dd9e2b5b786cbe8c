import { IPC_T_50, OWN, standard, TRADE, type Term } from './term'

const DESIGN = standard('IPC-2221B')
const QUALIFICATION = standard('IPC-6012')

/** The board, its joints, service and money. */
export const TERMS_OF_THE_BOARD: readonly Term[] = [
  {
    term: 'land',
    meaning: 'The conductor around a hole or under a lead, to which the lead is soldered.',
    from: IPC_T_50,
  },
  { term: 'annular ring', meaning: 'Width of the land left around a drilled hole.', from: IPC_T_50 },
  {
    term: 'net',
    meaning: 'Places of a board that are to be joined by its conductors, and by nothing else.',
    from: TRADE,
  },
  {
    term: 'netlist',
    meaning: 'The nets of a board with the place of every hole and land, by which the bare board is tested.',
    from: standard('IPC-D-356A'),
  },
  {
    term: 'placement',
    meaning: 'Where each component sits on a board: its centre, its side and how it is turned.',
    from: TRADE,
  },
  {
    term: 'piece of copper',
    meaning: 'Copper that touches or is joined by plated holes, on all layers together.',
    from: OWN,
    insteadOf: ['island'],
  },
  {
    term: 'radial clearance',
    meaning: 'Half the difference between the diameter of a plated hole and that of its lead.',
    from: TRADE,
  },
  {
    term: 'barrel plating',
    meaning: 'Copper on the wall of a plated hole.',
    from: QUALIFICATION,
    insteadOf: ['metal on the wall'],
  },
  {
    term: 'subtractive, additive',
    meaning: 'Whether a board’s conductors are etched from foil or plated where they are wanted.',
    from: IPC_T_50,
  },
  {
    term: 'true position',
    meaning: 'Where a feature should lie; its deviation is counted as a diameter.',
    from: standard('ISO 1101; ISO 5458'),
    insteadOf: ['off its place'],
  },
  {
    term: 'lead projection',
    meaning: 'How far a lead stands out beyond the land on the solder side.',
    from: standard('IPC-A-610, 7.3.3'),
    insteadOf: ['lead beyond the land'],
  },
  {
    term: 'supported, unsupported hole',
    meaning: 'With barrel plating, or without.',
    from: DESIGN,
    insteadOf: ['plated, bare'],
  },
  { term: 'liquidus, solidus', meaning: 'Above it all is melt; below it all is solid.', from: TRADE },
  {
    term: 'intermetallic compound',
    meaning: 'Compound of tin and the metal it was soldered to; it grows in store and in service.',
    from: TRADE,
  },
  { term: 'dwell', meaning: 'Contact length of the wave divided by conveyor speed.', from: TRADE },
  {
    term: 'survival target',
    meaning: 'Share of boards that shall outlive the service asked.',
    from: TRADE,
    insteadOf: ['boards that outlive service'],
  },
  {
    term: 'joint budget',
    meaning:
      'The failure rate and the defects per million joints that the survival target leaves to each joint.',
    from: OWN,
  },
  {
    term: 'piece cost, set-up cost, cost per rework',
    meaning: 'Cost of each board; cost once a batch or change; cost of mending one joint.',
    from: TRADE,
    insteadOf: ['a board, once, a rework'],
  },
  {
    term: 'prevention, appraisal, internal failure, external failure',
    meaning: 'The four kinds of cost of quality.',
    from: standard('BS 6143-2'),
  },
  {
    term: 'part',
    meaning:
      'A bought item, described once at the works under its part number: leads, coating, heat it bears. Of a finding, a part is one of the things it judges.',
    from: TRADE,
    insteadOf: ['article', 'material'],
  },
  {
    term: 'parts list',
    meaning: 'Which parts a board is made of: the references of each, how many, and how they are soldered.',
    from: standard('IEC 62023'),
    insteadOf: ['bill of materials', 'BOM'],
  },
  {
    term: 'reference',
    meaning:
      'The name of a component’s place on the board, such as R12; a range such as R1–R10 is ten of them.',
    from: standard('IEC 81346'),
    insteadOf: ['designator', 'position number'],
  },
  {
    term: 'works',
    meaning: 'The plant that makes the boards, with its lines, people, suppliers and parts.',
    from: TRADE,
  },
]
