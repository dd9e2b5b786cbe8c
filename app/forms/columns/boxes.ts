import type { ReactElement, ReactNode } from 'react'
import type { Column } from '@/shared/columns/column'

/** How columns of one kind are asked for: alone, with a label; or in a cell of a table, under the column's heading. */
export interface ColumnBoxes<C extends Column> {
  field(column: C, box: LabelledBox): ReactElement
  cell(column: C, box: BareBox): ReactElement
}

/** What every field is given. */
export interface LabelledBox {
  readonly name: string
  readonly label: ReactNode
  readonly hint: ReactNode
  readonly optional: boolean
  readonly defaultValue: string
}

/** What every control in a cell is given; what is wrong with it is said beneath. */
export interface BareBox {
  readonly name: string
  readonly defaultValue: string
  readonly 'aria-label': string
  readonly 'aria-invalid': true | undefined
  readonly 'aria-describedby': string | undefined
}
