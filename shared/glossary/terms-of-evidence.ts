import { IPC_T_50, ISO_3534_2, ISO_9000, OWN, standard, TRADE, type Term } from './term'

const ISO_2859 = standard('ISO 2859-1:1999, clause 3')
const VIM = (entry: string): Term['from'] => standard(`JCGM 200:2012 (VIM), ${entry}`)
const GAUGE = standard('AIAG, Measurement systems analysis, 4th edition')

/** Lots, tests, readings, charts and what they prove. */
export const TERMS_OF_EVIDENCE: readonly Term[] = [
  { term: 'lot', meaning: 'A delivered batch of laminate, boards or components.', from: ISO_2859 },
  {
    term: 'acceptance quality limit',
    meaning: 'The worst tolerable process average of a series of lots.',
    from: ISO_2859,
  },
  {
    term: 'nonconforming',
    meaning: 'Not meeting a requirement, of a unit in a sample or lot.',
    from: ISO_9000('3.6.9 (nonconformity)'),
    insteadOf: ['bad'],
  },
  { term: 'tested', meaning: 'Of a specimen: put through a test method.', from: TRADE, insteadOf: ['tried'] },
  {
    term: 'corrected',
    meaning:
      'Of something recorded: given other values, with a reason. What stood before is kept and shown beside them.',
    from: OWN,
  },
  {
    term: 'disposition',
    meaning: 'What is decided of a lot: accepted, rejected, or used as it is under a concession.',
    from: TRADE,
  },
  {
    term: 'rework desk',
    meaning:
      'Where joints found defective wait to be soldered again; each goes back to be inspected, and returns if it is still at fault.',
    from: OWN,
  },
  {
    term: 're-inspection',
    meaning: 'Another look at a reworked joint that names the joint.',
    from: TRADE,
  },
  {
    term: 'consumer’s risk',
    meaning: 'The probability that a sampling plan accepts a lot of limiting quality.',
    from: ISO_3534_2,
  },
  {
    term: 'operating characteristic',
    meaning: 'Probability of acceptance against incoming quality.',
    from: ISO_3534_2,
  },
  { term: 'log', meaning: 'Readings of a process characteristic over time.', from: TRADE },
  {
    term: 'control limits',
    meaning: 'Limits on a chart between which a stable process stays.',
    from: ISO_3534_2,
  },
  {
    term: 'fixed limits',
    meaning: 'Control limits set from an earlier period and kept, instead of estimated again.',
    from: standard('ISO 7870-2:2013, charts with prespecified values'),
    insteadOf: ['held limits'],
  },
  {
    term: 'phase',
    meaning: 'A stretch of a chart after a deliberate change, with limits of its own.',
    from: TRADE,
    insteadOf: ['fresh start'],
  },
  {
    term: 'run rule',
    meaning: 'A pattern of points that signals a special cause.',
    from: standard('ISO 7870-2:2013; Western Electric, Statistical quality control handbook, 1956'),
  },
  {
    term: 'signal',
    meaning: 'A point or run that a rule of the chart picks out; it wants a recorded cause.',
    from: TRADE,
  },
  {
    term: 'capability',
    meaning: 'How a stable process fits its limits: Cp, Cpk; of the whole spread: Pp, Ppk.',
    from: ISO_3534_2,
  },
  { term: 'repeatability', meaning: 'Scatter of one person’s readings of one thing.', from: VIM('2.21') },
  { term: 'reproducibility', meaning: 'Scatter between persons, instruments or places.', from: VIM('2.25') },
  {
    term: 'appraiser by part',
    meaning: 'Interaction of person and part in a gauge study.',
    from: GAUGE,
    insteadOf: ['people by part'],
  },
  {
    term: 'number of distinct categories (ndc)',
    meaning: 'How many groups of parts a gauge can tell apart.',
    from: GAUGE,
    insteadOf: ['categories told apart'],
  },
  {
    term: 'training',
    meaning:
      'An examination that a person passed in one skill, with the last day on which it holds. Kept once for all programmes, with its certificate.',
    from: TRADE,
  },
  {
    term: 'current',
    meaning: 'Of a certificate or calibration: not past its date.',
    from: TRADE,
    insteadOf: ['in date'],
  },
  {
    term: 'tolerance bound',
    meaning: 'A bound that a stated share of the units lies within, with stated confidence.',
    from: standard('ISO 16269-6:2014'),
  },
  {
    term: 'wetting, non-wetting, dewetting',
    meaning:
      'Solder spreads and adheres; touches and does not adhere; covered the surface and drew back. Recorded apart.',
    from: IPC_T_50,
  },
  {
    term: 'inspected',
    meaning: 'Of a joint or assembly: looked at by an inspector at a stated magnification.',
    from: ISO_9000('3.11.7'),
    insteadOf: ['seen', 'looked at'],
  },
  {
    term: 'first-pass yield',
    meaning: 'Share of assemblies that pass at the first attempt.',
    from: TRADE,
    insteadOf: ['yield at the first attempt'],
  },
]
