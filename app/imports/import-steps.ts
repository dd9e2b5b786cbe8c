/** How an import goes on, one to a line: bytes read, and at the end where to go or that it was refused. */
export type ImportStep =
  { readonly read: number; readonly of: number } | { readonly address: string } | { readonly refused: string }

/** The steps of an answer as they arrive. */
export async function* stepsOf(response: Response): AsyncGenerator<ImportStep> {
  if (!response.body) return
  const reader = response.body.pipeThrough(new TextDecoderStream()).getReader()
  let rest = ''
  for (;;) {
    const { value, done } = await reader.read()
    if (done) return
    const lines = (rest + value).split('\n')
    rest = lines.pop() ?? ''
    for (const line of lines) yield JSON.parse(line) as ImportStep
  }
}
