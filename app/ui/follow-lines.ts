/** The JSON values of a response that comes line by line, as they arrive; one that is refused is an error. */
export async function* linesOf<Value>(response: Response): AsyncGenerator<Value> {
  if (!response.ok || !response.body) throw new Error(`The server answered ${response.status}.`)
  const reader = response.body.pipeThrough(new TextDecoderStream()).getReader()
  let rest = ''
  for (;;) {
    const { value, done } = await reader.read()
    if (done) return
    const lines = (rest + value).split('\n')
    rest = lines.pop() ?? ''
    for (const line of lines) yield JSON.parse(line) as Value
  }
}

/** Tells each JSON value of a response that comes line by line; rejects when it is refused or breaks off. */
export async function followLines<Value>(address: string, tell: (value: Value) => void): Promise<void> {
  for await (const value of linesOf<Value>(await fetch(address))) tell(value)
}
