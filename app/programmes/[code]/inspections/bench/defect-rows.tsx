'use client'
import { useEffect, useRef, useState } from 'react'
import { useFormState } from '@/app/forms/command-form'
import { useHydrated } from '@/app/forms/hydrated'
import { useWorks } from '@/app/forms/works'
import { Button } from '@/app/ui/button'
import type { BoardPlanRead, PlanJoint } from '@/shared/board/plan-of-board'
import type { BoardOutline } from '@/shared/inspection/board-outline'
import { kindMeantBy } from '@/shared/inspection/typed-defect-kind'
import { decimalText } from '@/shared/quantity/decimal-typed'
import { useDefectCount } from './bench-keys'
import { BLANK, DEFECTS, FIELDS, isBlank, rowsTyped, type DefectTyped } from './defect-typed'
import { FindJoint } from './find-joint'
import { PlaceOnBoard } from './place-on-board'

interface DefectRowsProps {
  kinds: readonly string[]
  /** The same, most often found here first. */
  frequent: readonly string[]
  outline: BoardOutline | undefined
  /** The board as its files have it, where they were read. */
  plan: BoardPlanRead | undefined
  components: readonly { component: string; xMm: number; yMm: number }[]
}

const SPARE = 3

/** The defects of one assembly: typed, tapped, and placed on the plan. Without scripts, three rows to type into. */
export function DefectRows({ kinds, frequent, outline, plan, components }: DefectRowsProps) {
  const { typed, fields } = useFormState()
  const [rows, setRows] = useState<readonly DefectTyped[]>(() => rowsTyped(typed))
  const [active, setActive] = useState(0)
  const hydrated = useHydrated()
  const { notation } = useWorks()
  const { count } = useDefectCount()
  const boxes = useRef<HTMLFieldSetElement>(null)
  const filled = rows.filter((row) => !isBlank(row)).length
  useEffect(() => count(filled), [count, filled])

  const shown = [
    ...rows.slice(0, lastFilled(rows) + 1),
    ...Array<DefectTyped>(hydrated ? 1 : SPARE).fill(BLANK),
  ]
  const change = (at: number, change: Partial<DefectTyped>) =>
    setRows(shown.map((row, position) => (position === at ? { ...row, ...change } : row)))
  const into = Math.min(active, shown.length - 1)
  const focus = (at: number, field: keyof DefectTyped) =>
    boxes.current?.querySelector<HTMLInputElement>(`[name="${DEFECTS}.${at}.${field}"]`)?.focus()
  const pick = (kind: string) => {
    const at = shown[into]?.kind ? shown.length - 1 : into
    change(at, { kind })
    setActive(at)
    setTimeout(() => focus(at, 'joint'))
  }
  const named = plan?.joints.filter(({ name }) => name !== '') ?? []
  const place = ({ name, xMm, yMm }: PlanJoint) => {
    const [across, up] = [xMm, yMm].map((mm) => decimalText(mm, notation.decimal))
    change(into, { joint: name, xMm: across!, yMm: up! })
    setTimeout(() => focus(into, 'kind'))
  }
  const sameAgain = () => {
    const { kind, xMm, yMm } = shown.at(-2) ?? BLANK
    change(shown.length - 1, { kind, xMm, yMm })
    setActive(shown.length - 1)
    setTimeout(() => focus(shown.length - 1, 'joint'))
  }
  return (
    <fieldset ref={boxes} className="bench-defects">
      <legend>Defects</legend>
      <div className="bench-columns">
        <div className="bench-rows">
          {shown.map((row, at) => (
            <DefectRow
              key={at}
              row={row}
              at={at}
              fields={fields}
              counted={shown.slice(0, at).filter((one) => !isBlank(one)).length}
              onFocus={() => setActive(at)}
              onChange={(field, value) => change(at, { [field]: value })}
              onTakeOut={
                hydrated && !isBlank(row)
                  ? () => setRows(shown.filter((_, position) => position !== at))
                  : undefined
              }
            />
          ))}
          {hydrated && filled > 0 && (
            <Button kind="plain" onClick={sameAgain}>
              The same kind and place again
            </Button>
          )}
          <datalist id="defect-kinds">
            {kinds.map((kind) => (
              <option key={kind} value={kind} />
            ))}
          </datalist>
          {hydrated && (
            <div className="bench-kinds" role="group" aria-label={`Kind of defect ${into + 1}`}>
              {frequent.map((kind) => (
                <Button key={kind} aria-pressed={shown[into]?.kind === kind} onClick={() => pick(kind)}>
                  {kind}
                </Button>
              ))}
            </div>
          )}
          <p className="field-hint">
            A kind may be typed by its first letters or its initials: br for bridge, hnf for hole not filled.
            Rows left blank are not kept.
          </p>
        </div>
        {hydrated && (
          <div>
            <PlaceOnBoard
              outline={outline}
              plan={plan}
              components={components}
              defects={shown}
              active={into}
              onPlace={(xMm, yMm, joint) => change(into, { xMm, yMm, ...(joint && { joint }) })}
            />
            {named.length > 0 && (
              <FindJoint joints={named} defect={into + 1} onChoose={(joint) => place(joint)} />
            )}
          </div>
        )}
      </div>
    </fieldset>
  )
}

const lastFilled = (rows: readonly DefectTyped[]): number => rows.findLastIndex((row) => !isBlank(row))

interface DefectRowProps {
  row: DefectTyped
  at: number
  fields: Readonly<Record<string, string>>
  /** How many rows before it are sent: the command counts only those. */
  counted: number
  onFocus: () => void
  onChange: (field: keyof DefectTyped, value: string) => void
  onTakeOut: (() => void) | undefined
}

function DefectRow({ row, at, fields, counted, onFocus, onChange, onTakeOut }: DefectRowProps) {
  const meant = kindMeantBy(row.kind)
  return (
    <div className="bench-defect" role="group" aria-label={`Defect ${at + 1}`} onFocus={onFocus}>
      <span className="bench-number" aria-hidden="true">
        {at + 1}
      </span>
      {FIELDS.map(({ field, label, ...box }) => {
        const error = isBlank(row) ? undefined : fields[`${DEFECTS}.${counted}.${field}`]
        const id = `defect-${at}-${field}`
        return (
          <div key={field} className={`field bench-${field}`}>
            <label htmlFor={id}>{label}</label>
            <input
              id={id}
              className="control"
              name={`${DEFECTS}.${at}.${field}`}
              value={row[field]}
              onChange={(event) => onChange(field, event.currentTarget.value)}
              autoComplete="off"
              aria-invalid={error ? true : undefined}
              aria-describedby={error ? `${id}-error` : undefined}
              {...box}
            />
            {field === 'kind' && meant && meant !== row.kind.trim() && <p className="field-hint">{meant}</p>}
            {error && (
              <p id={`${id}-error`} className="field-error">
                {error}
              </p>
            )}
          </div>
        )
      })}
      {onTakeOut && (
        <Button kind="plain" aria-label={`Remove defect ${at + 1}`} onClick={onTakeOut}>
          Remove
        </Button>
      )}
    </div>
  )
}
