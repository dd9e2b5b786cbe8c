/** The lesson that something was brought by: the programme that learnt it, and its number there. */
export interface LessonRef {
  readonly programme: string
  readonly number: number
  /** An item brought by an earlier version names its lesson in what it asks; it need not be told again. */
  readonly inAsks?: true
}
