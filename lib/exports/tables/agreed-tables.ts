import { exportTable, instantOf, numberOf, textOf, type ExportTable } from '@/lib/exports/tables/export-table'
import { readChangeNotices } from '@/lib/queries/change-notices'
import { lessonsOf } from '@/lib/queries/lessons'
import { readOptionStudies } from '@/lib/queries/option-studies'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { changeInWords } from '@/shared/commands/changes/change-in-words'
import { boundInWords, limitName, parameterName, valueInBrief } from '@/shared/commands/named'
import { COST_KIND_FACTS, type CostLine } from '@/shared/cost/cost-line'
import type { ChangeNotice, NoticeAnswer } from '@/shared/gate/change-notice'
import type { OptionAlternative } from '@/shared/gate/option-alternative'
import type { OptionStudy } from '@/shared/gate/option-study'
import { lessonStatus, type Lesson } from '@/shared/lessons/lesson'
import { changeInWords as lessonInWords } from '@/shared/lessons/lesson-change'
import { AMOUNT_COLUMNS } from '@/lib/exports/tables/amount-columns'

/* Tables of what departments argue over and agree on. */

interface StudiedRow {
  readonly study: OptionStudy
  readonly alternative: OptionAlternative
}

const alternativesOf = (studies: readonly OptionStudy[]): StudiedRow[] =>
  studies.flatMap((study) => study.alternatives.map((alternative) => ({ study, alternative })))

/** Every alternative of every option study. */
export const alternativesTable = async ({ state }: ProgrammeView): Promise<ExportTable> =>
  exportTable<StudiedRow>(
    'alternatives',
    [
      numberOf('Study', ({ study }) => study.number),
      textOf('Question', ({ study }) => study.title),
      textOf('Item', ({ study }) => study.itemKey),
      instantOf('Opened at', ({ study }) => study.openedAt),
      textOf('Opened by', ({ study }) => study.openedBy),
      textOf('Alternative', ({ alternative }) => alternative.name),
      textOf('Note', ({ alternative }) => alternative.note),
      textOf('Values', ({ alternative }) =>
        Object.entries(alternative.values)
          .map(([key, value]) => `${parameterName(key)}: ${valueInBrief(key, value)}`)
          .join('; '),
      ),
      textOf('Limits', ({ alternative }) =>
        alternative.limits
          .map(
            ({ limit, value, document }) => `${limitName(limit)}: ${boundInWords(limit, value)}, ${document}`,
          )
          .join('; '),
      ),
      numberOf('Defects expected, per million', ({ alternative }) => alternative.defectsPerMillion),
      textOf('Withdrawn by', ({ alternative }) => alternative.withdrawn?.byName),
      instantOf('Adopted at', (row) => adoptionOf(row)?.at),
      textOf('Adopted by', (row) => adoptionOf(row)?.by),
      textOf('Why', (row) => adoptionOf(row)?.why),
    ],
    alternativesOf(await readOptionStudies(state.programme.id)),
  )

const adoptionOf = ({ study, alternative }: StudiedRow) =>
  study.adoption?.name === alternative.name ? study.adoption : undefined

/** The alternatives' own figures, a row each; a range by its two ends. What answers name is in the table of costs. */
export const alternativeCostsTable = async ({ state }: ProgrammeView): Promise<ExportTable> =>
  exportTable<StudiedRow & { line: CostLine }>(
    'alternative-costs',
    [
      numberOf('Study', ({ study }) => study.number),
      textOf('Alternative', ({ alternative }) => alternative.name),
      textOf('What', ({ line }) => COST_KIND_FACTS[line.kind].label),
      textOf('For', ({ line }) => line.per),
      ...AMOUNT_COLUMNS,
    ],
    alternativesOf(await readOptionStudies(state.programme.id)).flatMap((row) =>
      row.alternative.costs.map((line) => ({ ...row, line })),
    ),
  )

export const changeNoticesTable = async ({ state }: ProgrammeView): Promise<ExportTable> =>
  exportTable<ChangeNotice>(
    'change-notices',
    [
      numberOf('Notice', ({ number }) => number),
      textOf('Title', ({ title }) => title),
      textOf('Reason', ({ reason }) => reason),
      textOf('Opened by', ({ openedByName }) => openedByName),
      instantOf('Opened at', ({ openedAt }) => openedAt),
      numberOf('Cost a board', ({ costPerBoard }) => costPerBoard),
      numberOf('Cost once', ({ costOnce }) => costOnce),
      textOf('Changes', ({ changes }) => changes.map(({ change }) => changeInWords(change)).join('; ')),
      textOf('Disposition', ({ disposition }) => disposition?.kind),
      textOf('Disposed of by', ({ disposition }) => disposition?.byName),
      instantOf('Disposed of at', ({ disposition }) => disposition?.at),
      textOf('Why', ({ disposition }) => disposition?.why),
    ],
    await readChangeNotices(state.programme.id),
  )

/** Every answer that a department gave to a change notice. */
export const changeAnswersTable = async ({ state }: ProgrammeView): Promise<ExportTable> =>
  exportTable<{ notice: ChangeNotice; answer: NoticeAnswer }>(
    'change-answers',
    [
      numberOf('Notice', ({ notice }) => notice.number),
      textOf('Department', ({ answer }) => answer.department),
      textOf('Agrees', ({ answer }) => (answer.agrees ? 'yes' : 'no')),
      textOf('Reason', ({ answer }) => answer.reason),
      textOf('By', ({ answer }) => answer.personName),
      instantOf('At', ({ answer }) => answer.at),
    ],
    (await readChangeNotices(state.programme.id)).flatMap((notice) =>
      notice.answers.map((answer) => ({ notice, answer })),
    ),
  )

/** What this programme taught the later ones. */
export const lessonsTable = async ({ state }: ProgrammeView): Promise<ExportTable> =>
  exportTable<Lesson>(
    'lessons',
    [
      numberOf('Lesson', ({ number }) => number),
      textOf('Title', ({ title }) => title),
      textOf('Learnt', ({ learnt }) => learnt),
      textOf('Learnt from', ({ source }) => source.says),
      textOf('Change to later programmes', ({ change }) => lessonInWords(change)),
      textOf('Status', (lesson) => lessonStatus(lesson)),
      textOf('Proposed by', ({ proposed }) => proposed.byName),
      instantOf('Proposed at', ({ proposed }) => proposed.at),
      textOf('Decided by', ({ decided }) => decided?.byName),
      instantOf('Decided at', ({ decided }) => decided?.at),
      textOf('Why', ({ decided }) => decided?.why),
      textOf('Retired by', ({ retired }) => retired?.byName),
      instantOf('Retired at', ({ retired }) => retired?.at),
      textOf('Why retired', ({ retired }) => retired?.why),
    ],
    await lessonsOf(state.programme.id),
  )
