/** A value that a form is filled in with, and what the reason says of where it comes from. */
export interface FilledIn {
  readonly from: 'board files' | 'parts list'
  readonly parameter: string
  readonly value: unknown
  readonly reason: string
}
