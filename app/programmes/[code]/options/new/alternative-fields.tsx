'use client'
import { ColumnField } from '@/app/forms/column-field'
import { useFormState } from '@/app/forms/command-form'
import { NumberBox, TextBox, TickBox } from '@/app/forms/fields'
import { TableEditor } from '@/app/forms/table-editor'
import { COST_COLUMNS } from '@/shared/cost/cost-line'
import type { AlternativeContent } from '@/shared/gate/option-alternative'
import { statedLimitColumns } from '@/shared/gate/stated-limit-columns'
import type { AnswerToCite } from './answers-for'
import type { AskedOfItems } from './asked-of-items'

interface AlternativeFieldsProps {
  /** The place of the alternative in the input. */
  at: string
  letter: string
  /** What a box is for is said once, in the first of several. */
  first: boolean
  asked: AskedOfItems
  begin: AlternativeContent | undefined
  answers: readonly AnswerToCite[]
  /** A name that cannot be changed any more, since answers go by it. */
  fixedName?: string
}

/** One alternative: its name, what it would specify and state, what it costs, and the answers it rests on. */
export function AlternativeFields(props: AlternativeFieldsProps) {
  const { at, letter, first: isFirst, asked, begin, answers, fixedName } = props
  const { fields, typed } = useFormState()
  const first = (hint: string): string => (isFirst ? hint : '')
  const { parameters, limits, today } = asked
  const small = parameters.filter(({ shape }) => shape.kind === 'field')
  const tables = parameters.filter(({ shape }) => shape.kind === 'table')
  const items = [...new Set(parameters.map(({ item }) => item))]
  const valueOf = (key: string): unknown => begin?.values[key] ?? today[key]
  return (
    <fieldset className="option-fields">
      <legend>
        Alternative <span className="option-letter">{letter}</span>
      </legend>
      <div className="form-row">
        {fixedName === undefined ? (
          <TextBox
            name={`${at}.name`}
            label="Name"
            maxLength={60}
            defaultValue={begin?.name ?? (at === 'alternatives.0' ? 'As today' : '')}
            required
          />
        ) : (
          <input type="hidden" name={`${at}.name`} value={fixedName} />
        )}
        <TextBox name={`${at}.note`} label="Note" maxLength={500} defaultValue={begin?.note} optional />
      </div>
      {items.map((item) => {
        const own = small.filter((parameter) => parameter.item === item)
        return own.length === 0 ? null : (
          <div key={item}>
            {items.length > 1 && <p className="option-item">{item}</p>}
            <div className="option-values">
              {own.map(({ key, help, shape }) =>
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
          </div>
        )
      })}
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
      {limits.length > 0 && (
        <details
          className="disclosure"
          open={Object.keys(fields).some((field) => field.startsWith(`${at}.limits`))}
          suppressHydrationWarning
        >
          <summary>
            Limits it would state
            <span className="sr-only"> of alternative {letter}</span>
          </summary>
          <div className="disclosure-body">
            <TableEditor
              name={`${at}.limits`}
              caption={`Limits of alternative ${letter}`}
              columns={statedLimitColumns(limits)}
              rows={(begin?.limits ?? []).map((stated) => ({ ...stated }))}
              maxRows={20}
            />
          </div>
        </details>
      )}
      <fieldset className="field field-fieldset">
        <legend className="field-label">What it costs, by our own figures</legend>
        <p className="field-hint">
          {first(
            'A figure such as 0.42, or a range such as 120 to 150; 0 if it costs nothing; left empty, it is not known. An answer’s amount takes the place of an own figure of the same kind.',
          )}
        </p>
        {fields[`${at}.costs`] && <p className="field-error">{fields[`${at}.costs`]}</p>}
        <TableEditor
          name={`${at}.costs`}
          caption={`Costs of alternative ${letter}`}
          columns={COST_COLUMNS}
          rows={(begin?.costs ?? []).map(({ kind, per, amount }) => ({
            kind,
            ...(per && { per }),
            ...(amount !== null && { amount: String(amount).replace('..', ' to ') }),
          }))}
          maxRows={40}
        />
      </fieldset>
      <NumberBox
        name={`${at}.defectsPerMillion`}
        label="Defects expected"
        hint={first('Left out, those of its process in the cost table.')}
        unit="per million joints"
        defaultValue={begin?.defectsPerMillion ?? ''}
        optional
      />
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
