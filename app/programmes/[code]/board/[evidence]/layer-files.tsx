import { randomUUID } from 'node:crypto'
import { confirmBoardFiles } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox } from '@/app/forms/fields'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { FileTold } from '@/lib/board-files/board-reading'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ProposedRole } from '@/shared/board/layer-role'
import { codeOfRole, placementChoices, roleLabel, roleChoices } from '@/shared/board/role-code'
import { refusal } from '@/shared/policy'
import { fitInWords } from './fit-in-words'

interface LayerFilesProps {
  view: ProgrammeView
  evidence: string
  files: readonly FileTold[]
}

/** What each file is, as it says itself, as its name suggests, or as somebody said. */
export function LayerFiles({ view, evidence, files }: LayerFilesProps) {
  const read = files.filter(({ format }) => isRead(format))
  const left = files.filter(({ format }) => !isRead(format))
  const may = !refusal('confirm-board-files', view.actor)
  const inner = read.filter(({ role }) => role?.kind === 'copper' && role.side === 'inner').length
  const place = new Map(read.map(({ name }, at) => [name, at]))
  const table = (
    <RuledTable
      caption="Files that were read"
      captionHidden
      rows={read}
      rowKey={({ name }) => name}
      columns={[
        { label: 'File', names: true, cell: ({ name }) => name },
        {
          label: 'Is',
          cell: (file) => {
            const { name, role } = file
            return may && role ? (
              <ChoiceBox
                name={`files.${place.get(name)}.role`}
                label={`What ${name} is`}
                choices={choicesFor(file, inner + 2)}
                defaultValue={codeOfRole(role)}
              />
            ) : (
              role && roleLabel(role)
            )
          },
        },
        { label: 'Proposed by', cell: ({ proposed }) => proposed && BY[proposed.by] },
        { label: 'Holds', set: 'number', cell: ({ count }) => count },
        { label: 'Unit', cell: ({ unit }) => unit },
        { label: 'To know', cell: remarksOf },
      ]}
    />
  )
  return (
    <Section
      id="files"
      heading="Files"
      lead="Layers are proposed from what the files say, else from their names. Confirm them before the board is relied on."
    >
      {may ? (
        <CommandForm
          action={confirmBoardFiles}
          formKey={randomUUID()}
          hidden={{
            programme: view.code,
            evidence,
            ...Object.fromEntries(read.map(({ name }, at) => [`files.${at}.name`, name])),
          }}
          label="Confirm what each file is"
        >
          {table}
          <p className="form-actions">
            <SubmitButton>Confirm the files</SubmitButton>
          </p>
        </CommandForm>
      ) : (
        table
      )}
      {left.length > 0 && <LeftFiles files={left} />}
    </Section>
  )
}

const isRead = (format: FileTold['format']): boolean => format !== 'unread' && format !== 'other'

function choicesFor({ format, fit, saysSides = false }: FileTold, layers: number) {
  if (format === 'placement')
    return placementChoices({
      sides: saysSides,
      unit: fit?.unitBy === 'file',
      wouldMove: fit?.move !== undefined,
    })
  return roleChoices(format === 'unread' || format === 'other' ? 'gerber' : format, layers)
}

const BY: Record<ProposedRole['by'], string> = {
  attribute: 'the file itself',
  name: 'its name',
  content: 'what it holds',
  fit: 'its fit on the board',
  nothing: 'nothing: choose',
}

function remarksOf({ passed = [], drill, format, fit, unitAssumed = false }: FileTold): string {
  if (fit) return fitInWords(fit)
  const over = passed.map(
    ({ what, times, line }) => `${what} passed over ${times} times, first at line ${line}`,
  )
  const assumed =
    drill && drill.assumed.length > 0
      ? [
          `${drill.assumed.join(', ')} not said: read as ${drill.reading.integerDigits}:${drill.reading.decimals} ${drill.reading.unit}, ${drill.reading.kept} zeros kept`,
        ]
      : []
  const unit = unitAssumed ? ['unit not said: read as inches'] : []
  return (
    [...over, ...assumed, ...unit].join('; ') || (format === 'drill' ? 'says how its numbers are read' : '')
  )
}

function LeftFiles({ files }: { files: readonly FileTold[] }) {
  return (
    <RuledTable
      caption="Files that were not read"
      rows={files}
      rowKey={({ name }) => name}
      columns={[
        { label: 'File', names: true, cell: ({ name }) => name },
        {
          label: 'Why',
          cell: ({ refused }) =>
            refused
              ? `${refused.line === undefined ? '' : `Line ${refused.line}: `}${refused.reason}`
              : 'Neither a Gerber layer nor a drill file, a netlist or a table of components.',
        },
      ]}
    />
  )
}
