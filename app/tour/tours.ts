import * as to from '@/app/addresses'
import type { DEMO_CODES } from '@/lib/queries/demo-loaded'

/** One page of the demo, and what to look at there. */
interface TourStep {
  readonly title: string
  readonly href: string
  readonly lookAt: string
}

export type TourRole = 'design' | 'production' | 'quality' | 'auditor' | 'administrator'

const code = (of: (typeof DEMO_CODES)[number]): string => of
const IN_SERVICE = code('LX-41')
const AT_WORK = code('PX-12')
const NEW = code('VP-3')

/** Five steps through the demo for each role, every one on a page that the role may read. */
export const TOURS: Readonly<Record<TourRole, readonly TourStep[]>> = {
  design: [
    {
      title: 'Your work',
      href: to.deskAddress(),
      lookAt:
        'What others wait for from you stands first, over all programmes, the oldest due before the rest.',
    },
    {
      title: 'A programme that has just begun',
      href: to.startAddress(NEW),
      lookAt: 'Of over two hundred open points these few values open the most checks; each says which.',
    },
    {
      title: 'Holes, leads and lands',
      href: to.itemAddress(IN_SERVICE, 'holes-and-lands'),
      lookAt:
        'Open the form of a value and type another: the findings turn beside it before anything is saved.',
    },
    {
      title: 'All margins on one scale',
      href: to.marginsAddress(IN_SERVICE),
      lookAt:
        'See what lies nearest to its limit, then try another board temperature and watch the ticks move.',
    },
    {
      title: 'A choice between alternatives',
      href: to.optionAddress(IN_SERVICE, 1),
      lookAt: 'The lead finish was chosen by what each alternative turns, undoes and costs, side by side.',
    },
  ],
  production: [
    {
      title: 'Your work',
      href: to.deskAddress(),
      lookAt: 'Questions of the other departments wait here with the day by which they want an answer.',
    },
    {
      title: 'The lines today',
      href: to.worksAddress(),
      lookAt:
        'Each machine with its last reading against what today’s programmes specify, and what is overdue.',
    },
    {
      title: 'A log of a programme',
      href: to.logAddress(IN_SERVICE, 'FLUX-1'),
      lookAt:
        'The readings with their chart; where the chart signals, the cause that was found stands beside it.',
    },
    {
      title: 'The store',
      href: to.storeAddress(),
      lookAt: 'What expires first is used first; whoever takes another lot says why.',
    },
    {
      title: 'Inspection at the bench',
      href: to.benchAddress(IN_SERVICE),
      lookAt: 'One assembly after another is entered by keys alone, each defect at its place on the board.',
    },
  ],
  quality: [
    {
      title: 'Your work',
      href: to.deskAddress(),
      lookAt:
        'What waits for quality’s signature stands first; one signature may cover a list you have read.',
    },
    {
      title: 'Lots of a programme',
      href: to.lotsAddress(AT_WORK),
      lookAt: 'Which lots are tested and released, and which finding a lot that waits holds up.',
    },
    {
      title: 'A gate',
      href: to.gateAddress(AT_WORK, 'evaluation'),
      lookAt:
        'All that blocks the gate, each with its way out: mend it, record what is missing, or concede it.',
    },
    {
      title: 'Defects against the budget',
      href: to.reliabilityAddress(IN_SERVICE),
      lookAt:
        'What was allowed, what was seen, and how many more joints must be looked at before it is shown.',
    },
    {
      title: 'Company rules',
      href: to.companyRulesAddress(),
      lookAt: 'A rule of the works is stated once; each programme decides whether it takes it over.',
    },
  ],
  auditor: [
    {
      title: 'The trails of all programmes',
      href: to.auditAddress(),
      lookAt: 'Search who did what over every programme, and have each chain of entries verified.',
    },
    {
      title: 'A programme in service',
      href: to.routeCardAddress(IN_SERVICE),
      lookAt: 'Four stages with their items on one sheet, and each gate with the day on which it was signed.',
    },
    {
      title: 'Why a finding is so',
      href: to.whyAddress(IN_SERVICE, { kind: 'finding', key: 'lead-clearance' }),
      lookAt: 'Walk back from the verdict to every value, its author, its day and its evidence.',
    },
    {
      title: 'A gate and its signatures',
      href: to.gateAddress(IN_SERVICE, 'specification'),
      lookAt: 'Each stamp says what it covered then, and holds it against what stands today.',
    },
    {
      title: 'The trail of a programme',
      href: to.trailAddress(IN_SERVICE),
      lookAt:
        'Take the bundle along and verify it away from this server, with a program that shares no code with it.',
    },
  ],
  administrator: [
    {
      title: 'People',
      href: to.peopleAddress(),
      lookAt: 'Who may come in, and to which department of the works each belongs.',
    },
    {
      title: 'Instruments',
      href: to.instrumentsAddress(),
      lookAt: 'An instrument past its day makes what rests on its readings undetermined, in every programme.',
    },
    {
      title: 'Training of the works',
      href: to.worksPeopleAddress(),
      lookAt: 'Who may do what, until when, and what runs out soon.',
    },
    {
      title: 'Administration',
      href: to.administrationAddress(),
      lookAt: 'What the nightly verification of all trails found, and the trail of the installation itself.',
    },
    {
      title: 'Your own sessions',
      href: to.passwordAddress(),
      lookAt: 'Every browser in which you are signed in, each of which can be ended here.',
    },
  ],
}
