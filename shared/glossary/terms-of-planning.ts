import { ISO_9000, OWN, standard, TRADE, type Term } from './term'

/** How a programme is planned, decided and signed. */
export const TERMS_OF_PLANNING: readonly Term[] = [
  { term: 'programme', meaning: 'One board (assembly) brought from specification to service.', from: OWN },
  {
    term: 'stage',
    meaning: 'Specification, evaluation, control, assessment, in that order; each ends at a gate.',
    from: OWN,
  },
  {
    term: 'gate',
    meaning:
      'The end of a stage: open when nothing blocks it and design, production and quality have signed.',
    from: TRADE,
  },
  {
    term: 'plan',
    meaning: 'The items of a programme over the four stages: the standard plan, tailored.',
    from: OWN,
  },
  {
    term: 'item',
    meaning:
      'One thing to be settled: who owns it, what it specifies, which checks it carries, which evidence it wants, who approves it.',
    from: OWN,
  },
  {
    term: 'not applicable',
    meaning:
      'Tailored out, with a reason that quality has agreed to (an item); or a matter that the programme does not raise (a finding).',
    from: standard('ISO 9001:2015, 4.3 (applicability of requirements)'),
    insteadOf: ['set aside', 'nothing asked'],
  },
  {
    term: 'parameter',
    meaning: 'One specified value with its type, unit and bounds: a number, a choice or a table.',
    from: TRADE,
  },
  {
    term: 'specification',
    meaning: 'The current value of every parameter; each change is a revision with reason and author.',
    from: ISO_9000('3.8.7'),
  },
  {
    term: 'requirement',
    meaning: 'A limit as a document states it: customer, standard, company rule or common practice.',
    from: ISO_9000('3.6.4'),
  },
  {
    term: 'governing requirement',
    meaning: 'Of all that is stated on one limit, the one that decides, with its authority and document.',
    from: TRADE,
    insteadOf: ['ruling'],
  },
  {
    term: 'company rule',
    meaning:
      'A limit that the company asks of every programme, kept once at the works with its document and edition. A programme starts with it; when it changes, each programme takes the change over or keeps its own with a reason.',
    from: OWN,
  },
  {
    term: 'preferred value',
    meaning: 'A value that the works prefer: what a new programme starts with, until it specifies another.',
    from: OWN,
  },
  {
    term: 'rule',
    meaning: 'A pure function from specification and records to a finding, with its inputs declared.',
    from: OWN,
  },
  {
    term: 'finding',
    meaning:
      'What a rule gives: verdict, what was found, the requirement, the margin, the calculation, the source, and what would mend it.',
    from: ISO_9000('3.13.9 (audit finding)'),
  },
  {
    term: 'verdict',
    meaning: 'meets, marginal, fails, undetermined or not applicable. Nothing meets on nothing.',
    from: OWN,
  },
  {
    term: 'marginal',
    meaning: 'Inside the limit by less than the guard band.',
    from: TRADE,
  },
  {
    term: 'guard band',
    meaning: 'The distance kept from a limit because what was measured is uncertain.',
    from: standard('ISO 14253-1:2017; JCGM 106:2012, 3.3.11'),
  },
  {
    term: 'margin',
    meaning: 'How far inside its limit a value lies; negative outside.',
    from: TRADE,
    insteadOf: ['room'],
  },
  {
    term: 'rounding tolerance',
    meaning: 'A difference left by binary arithmetic, which decides nothing.',
    from: TRADE,
    insteadOf: ['dust'],
  },
  {
    term: 'evidence',
    meaning: 'A file, link or record attached to an item; a file is known by its SHA-256.',
    from: ISO_9000('3.8.3 (objective evidence)'),
  },
  {
    term: 'open point',
    meaning: 'One reason why an item is not yet ready or approved.',
    from: TRADE,
    insteadOf: ['short of', 'shortfall'],
  },
  {
    term: 'blocker',
    meaning: 'One reason why a gate cannot be signed.',
    from: TRADE,
    insteadOf: ['in the way'],
  },
  {
    term: 'status',
    meaning: 'The derived state of an item: open, incomplete, ready, approved, lapsed or not applicable.',
    from: TRADE,
    insteadOf: ['standing'],
  },
  {
    term: 'action',
    meaning: 'A question one department asks another, with a due date, an answer and the asker’s acceptance.',
    from: TRADE,
  },
  {
    term: 'option study',
    meaning:
      'Alternatives for a choice, over one item or several, compared: findings, cost and answered actions; one is adopted, with reason.',
    from: TRADE,
  },
  {
    term: 'approval',
    meaning: 'A department’s signed agreement to an item as it is. It lapses when what it signed changes.',
    from: TRADE,
  },
  {
    term: 'signed content',
    meaning:
      'What a signature is given to: values, limits, evidence and findings, as data. Its SHA-256 says whether it is still the same.',
    from: standard('21 CFR 11.70 (a signature is linked to its record)'),
    insteadOf: ['cover'],
  },
  {
    term: 'confirmation',
    meaning:
      'An approval renewed by who gave it, after a change that left verdicts, limits and evidence the same and no margin worse.',
    from: OWN,
  },
  {
    term: 'change notice',
    meaning:
      'Several changes of a specification seen as one: each department agrees or objects, then all are made at once, or none.',
    from: TRADE,
  },
  {
    term: 'concession',
    meaning:
      'Permission to use or release something that does not meet a requirement, limited in number or time.',
    from: ISO_9000('3.12.5'),
  },
  {
    term: 'deviation permit',
    meaning:
      'Permission, given before anything is made, to depart from what is specified, limited in number or time.',
    from: ISO_9000('3.12.6'),
  },
  {
    term: 'open gate',
    meaning:
      'A gate that all three departments have signed and that still stands. What is soldered or inspected before an earlier one is open is warned of.',
    from: OWN,
  },
  {
    term: 'design review',
    meaning:
      'A meeting on one programme: who was there, what was open, and the minutes; what became of each line stands beside it.',
    from: ISO_9000('3.11.2 (review)'),
  },
  {
    term: 'minutes',
    meaning:
      'The lines of a design review: points, notes, decisions, actions. A line may be struck and corrected until the chair signs; then nothing of them changes.',
    from: TRADE,
  },
  {
    term: 'comment',
    meaning:
      'A remark beside an item, a finding or a value, for people it names, until it is resolved or becomes an action.',
    from: OWN,
  },
  {
    term: 'nonconformity',
    meaning:
      'Something found that does not fulfil what was required of it. It is open, contained, corrected or checked by what is on record of it.',
    from: ISO_9000('3.6.9'),
    insteadOf: ['problem'],
  },
  {
    term: 'containment',
    meaning: 'What keeps a nonconformity from going further until it is corrected.',
    from: TRADE,
  },
  {
    term: 'correction',
    meaning: 'What removes a nonconformity that was found.',
    from: ISO_9000('3.12.3'),
  },
  {
    term: 'corrective action',
    meaning: 'What removes the cause of a nonconformity, so that it does not come again.',
    from: ISO_9000('3.12.2'),
  },
  {
    term: 'open task',
    meaning: 'What a person or department has to do next.',
    from: TRADE,
    insteadOf: ['owed'],
  },
  {
    term: 'trail',
    meaning: 'The append-only, hash-chained list of what was decided, by whom, when and why.',
    from: standard('21 CFR 11.10(e) (audit trail)'),
  },
]
