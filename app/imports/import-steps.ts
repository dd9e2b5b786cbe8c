/** How an import goes on, one to a line: bytes read, and at the end where to go or that it was refused. */
export type ImportStep =
  { readonly read: number; readonly of: number } | { readonly address: string } | { readonly refused: string }
