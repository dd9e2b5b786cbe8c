/** What answers a query, as the dialog and the page show it. */
export interface Answer {
  /** How many there are in all. */
  readonly found: number
  readonly groups: readonly AnswerGroup[]
}

export interface AnswerGroup {
  readonly name: string
  readonly all: number
  readonly matches: readonly Match[]
}

export interface Match {
  readonly label: string
  /** What tells it from others: what it is of, and in which programme. */
  readonly detail: string
  readonly href: string
}
