'use client'
import { ColumnField } from '@/app/forms/column-field'
import { useFormState } from '@/app/forms/command-form'
import { NumberBox, TextBox, TickBox } from '@/app/forms/fields'
import { TableEditor } from '@/app/forms/table-editor'
import { letterOf } from '@/shared/gate/option-letter'
import type { OptionAlternative } from '@/shared/gate/option-study'
import type { ParameterShape } from '@/shared/plan/parameter'
import type { AnswerToCite } from './answers-for'

/** As much of a parameter's declaration as can be sent to the browser. */
export interface AskedParameter {
  readonly key: string
  readonly label: string
  readonly help: string
  readonly shape: ParameterShape
}

interface AlternativeFieldsProps {
  position: number
  parameters: readonly AskedParameter[]
  today: Readonly<Record<string, unknown>>
  begin: OptionAlternative | undefined
  answers: readonly AnswerToCite[]
}

/** One alternative: its name, what it would specify, what it costs, and the answers it rests on. */
export function AlternativeFields({ position, parameters, today, begin, answers }: AlternativeFieldsProps) {
  const { fields, typed } = useFormState()
  const at = `alternatives.${position}`
  const letter = letterOf(position)
  /** What a box is for is said once, not in every alternative. */
  const first = (hint: string): string => (position === 0 ? hint : '')
  const small = parameters.filter(({ shape }) => shape.kind === 'field')
  const tables = parameters.filter(({ shape }) => shape.kind === 'table')
  const valueOf = (key: string): unknown => begin?.values[key] ?? today[key]
  return (
    <fieldset className="option-fields">
      <legend>
        Alternative <span className="option-letter">{letter}</span>
      </legend>
      <div className="form-row">
        <TextBox
          name={`${at}.name`}
          label="Name"
          maxLength={60}
          defaultValue={begin?.name ?? (position === 0 ? 'As today' : '')}
          required
        />
        <TextBox name={`${at}.note`} label="Note" maxLength={500} defaultValue={begin?.note} optional />
      </div>
      {small.length > 0 && (
        <div className="option-values">
          {small.map(({ key, help, shape }) =>
            shape.kind === 'field' ? (
              <ColumnField
                key={key}
                name={`${at}.values.${key}`}
                column={shape.column}
                value={valueOf(key)}
                hint={first(help)}
              />
            ) : null,
          )}
        </div>
      )}
      {tables.map(({ key, label, shape }) => {
        if (shape.kind !== 'table') return null
        const name = `${at}.values.${key}`
        const faulty = Object.keys(fields).some((field) => field.startsWith(name))
        const given = valueOf(key)
        return (
          <details
            key={key}
            className="disclosure"
            open={faulty || tables.length === 1}
            suppressHydrationWarning
          >
            <summary>
              {label}
              <span className="sr-only"> of alternative {letter}</span>
            </summary>
            <div className="disclosure-body">
              {fields[name] && <p className="field-error">{fields[name]}</p>}
              <TableEditor
                name={name}
                caption={`${label} of alternative ${letter}`}
                columns={shape.columns}
                rows={Array.isArray(given) ? (given as Record<string, unknown>[]) : []}
                maxRows={shape.maxRows}
              />
            </div>
          </details>
        )
      })}
      <div className="form-row">
        <NumberBox
          name={`${at}.costPerBoard`}
          label="Cost a board"
          hint={first('All it adds to a board: material and work.')}
          defaultValue={begin?.costPerBoard ?? 0}
          required
        />
        <NumberBox
          name={`${at}.costOnce`}
          label="Cost once"
          hint={first('Tooling, set-up, trials.')}
          defaultValue={begin?.costOnce ?? 0}
          required
        />
        <NumberBox
          name={`${at}.defectsPerMillion`}
          label="Defects expected"
          hint={first('Left out, those of its process in the cost table.')}
          unit="per million joints"
          defaultValue={begin?.defectsPerMillion ?? ''}
          optional
        />
      </div>
      {answers.length > 0 && (
        <fieldset className="field field-fieldset">
          <legend className="field-label">Answers it rests on</legend>
          {answers.map(({ number, message }) => (
            <TickBox
              key={number}
              name={`${at}.actions.${number}`}
              label={`Action ${number}: ${message}`}
              defaultChecked={
                'count' in typed ? `${at}.actions.${number}` in typed : begin?.actions.includes(number)
              }
            />
          ))}
          {fields[`${at}.actions`] && <p className="field-error">{fields[`${at}.actions`]}</p>}
        </fieldset>
      )}
    </fieldset>
  )
}
