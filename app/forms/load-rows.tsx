'use client'
import { useId, useState } from 'react'
import { tableRowsAddress } from '@/app/addresses'
import { boxesFrom, loadedTable, type LoadedMapping, type LoadedTable } from '@/app/forms/loaded-rows'
import { useWorks } from '@/app/forms/works'
import { Button } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import type { Column } from '@/shared/columns/column'
import { counted } from '@/shared/quantity/counted'
import type { DecimalSign } from '@/shared/quantity/notation'

type Cells = Readonly<Record<string, string>>

interface LoadRowsProps {
  columns: Readonly<Record<string, Column>>
  maxRows: number
  /** Puts rows into the boxes: instead of those that are there, or below them. */
  onRows: (rows: readonly Cells[], place: 'instead' | 'below') => void
}

interface Loaded {
  readonly table: LoadedTable
  readonly mapping: LoadedMapping
}

/** Rows pasted from a spreadsheet or loaded from a CSV or XLSX file, put into the form's boxes for review; nothing is saved. */
export function LoadRows({ columns, maxRows, onRows }: LoadRowsProps) {
  const { notation } = useWorks()
  const id = useId()
  const [pasted, setPasted] = useState('')
  const [file, setFile] = useState<File>()
  const [refused, setRefused] = useState<string>()
  const [loaded, setLoaded] = useState<Loaded>()
  const [told, setTold] = useState<string>()

  const read = async () => {
    setTold(undefined)
    setLoaded(undefined)
    const answer = await readTable(file ?? pasted)
    if ('message' in answer) return setRefused(answer.message)
    setRefused(undefined)
    setLoaded(loadedTable(answer.rows, answer.decimal, columns))
  }
  const boxes = loaded && boxesFrom(loaded.table, loaded.mapping, columns, notation)
  const tooMany = boxes !== undefined && boxes.rows.length > maxRows
  const put = (place: 'instead' | 'below') => {
    if (!boxes) return
    onRows(boxes.rows, place)
    setTold(`${boxes.rows.length} rows stand in the boxes. Nothing is saved yet.`)
    setLoaded(undefined)
  }
  return (
    <details className="disclosure load-rows print-hidden">
      <summary>Paste or load rows</summary>
      <div className="disclosure-body form-stack" onInput={(event) => event.stopPropagation()}>
        <div className="field">
          <label className="field-label" htmlFor={`${id}-pasted`}>
            Rows copied from a spreadsheet
          </label>
          <textarea
            id={`${id}-pasted`}
            className="control"
            rows={3}
            value={pasted}
            onChange={(event) => setPasted(event.target.value)}
          />
        </div>
        <div className="field">
          <label className="field-label" htmlFor={`${id}-file`}>
            Or a CSV or XLSX file
          </label>
          <input
            id={`${id}-file`}
            className="control"
            type="file"
            accept=".csv,.tsv,.txt,.xlsx"
            onChange={(event) => setFile(event.target.files?.[0])}
          />
        </div>
        <div className="form-actions">
          <Button onClick={() => void read()}>Read the rows</Button>
        </div>
        {refused && (
          <Notice kind="refusal" announced title="The rows were not read">
            {refused}
          </Notice>
        )}
        {loaded && boxes && (
          <>
            <Matches
              columns={columns}
              loaded={loaded}
              onChange={(mapping) => setLoaded({ ...loaded, mapping })}
            />
            <Faults faults={boxes.faults} />
            {tooMany ? (
              <Notice kind="refusal" announced>
                The table has {boxes.rows.length} rows, and at most {maxRows} stand here.
              </Notice>
            ) : (
              <div className="form-actions">
                <Button onClick={() => put('instead')}>
                  {`Put ${boxes.rows.length} rows in place of those here`}
                </Button>
                <Button kind="quiet" onClick={() => put('below')}>
                  Add them below
                </Button>
              </div>
            )}
          </>
        )}
        {told && (
          <Notice kind="info" announced>
            {told}
          </Notice>
        )}
      </div>
    </details>
  )
}

interface MatchesProps {
  columns: Readonly<Record<string, Column>>
  loaded: Loaded
  onChange: (mapping: LoadedMapping) => void
}

/** Which column of the table fills which box; to be changed where a heading says it otherwise. */
function Matches({ columns, loaded: { table, mapping }, onChange }: MatchesProps) {
  const id = useId()
  const choose = (key: string, at: string) => {
    const { [key]: _before, ...others } = mapping
    onChange(at === '' ? others : { ...others, [key]: Number(at) })
  }
  return (
    <fieldset className="field field-fieldset">
      <legend className="field-label">Which column is which</legend>
      <div className="form-row">
        {Object.entries(columns).map(([key, { label }]) => (
          <div key={key} className="field">
            <label className="field-label" htmlFor={`${id}-${key}`}>
              {label}
            </label>
            <select
              id={`${id}-${key}`}
              className="control"
              value={mapping[key] ?? ''}
              onChange={(event) => choose(key, event.target.value)}
            >
              <option value="">no column</option>
              {table.headings.map((heading, at) => (
                <option key={at} value={at}>
                  {heading || `column ${at + 1}`}
                </option>
              ))}
            </select>
          </div>
        ))}
      </div>
    </fieldset>
  )
}

const MAX_FAULTS = 20

function Faults({ faults }: { faults: readonly string[] }) {
  if (faults.length === 0) return null
  return (
    <Notice kind="warning" announced title={`${counted(faults.length, 'cell is', 'cells are')} left empty`}>
      <ul>
        {faults.slice(0, MAX_FAULTS).map((fault) => (
          <li key={fault}>{fault}</li>
        ))}
      </ul>
      {faults.length > MAX_FAULTS && <p>And {faults.length - MAX_FAULTS} more.</p>}
    </Notice>
  )
}

type Answer =
  | { readonly rows: readonly (readonly string[])[]; readonly decimal: DecimalSign }
  | { readonly message: string }

async function readTable(table: File | string): Promise<Answer> {
  if (typeof table === 'string' && table.trim() === '')
    return { message: 'Paste the rows, or choose a file.' }
  const form = new FormData()
  form.set('table', table)
  try {
    const answer = await fetch(tableRowsAddress(), {
      method: 'POST',
      headers: { accept: 'application/json' },
      body: form,
    })
    return (await answer.json()) as Answer
  } catch {
    return { message: 'The server could not be reached. What you pasted is still here; try again.' }
  }
}
